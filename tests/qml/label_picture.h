// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A page of printed labels as a picture.

#include "core/base/code.h"
#include "labels/print/print_labels.h"

#include <QImage>

namespace coneline::tests {

inline QImage label_picture(const std::vector<Code>& codes) {
  std::vector<labels::LabelText> texts;
  for (const auto& code : codes)
    texts.push_back({code.text(), {}, {}, {}, {}, {}});
  labels::PrintOptions options;
  options.dpi = 203;
  return labels::preview(texts, labels::common_stocks().front(), options, 0, labels::Edges::hidden)
      .value();
}

} // namespace coneline::tests
