// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a label says, in words ready to be read. Only the code is needed; what is empty is left out.

#include <string>

namespace coneline::labels {

struct LabelText {
  std::string code;    ///< "T1742Q"
  std::string cross;   ///< "Zamia integrifolia × Zamia furfuracea"
  std::string cone;    ///< "cone C1712K"
  std::string sown;    ///< "sown 2026-03-09"
  std::string count;   ///< "24 seeds"
  std::string caution; ///< "Poisonous: gloves"

  bool operator==(const LabelText&) const = default;
};

} // namespace coneline::labels
