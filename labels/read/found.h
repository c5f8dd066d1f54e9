// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a picture told.

#include <optional>
#include <string>
#include <vector>

namespace coneline::labels {

/// One symbol in a picture: what it says, "QRCode", "DataMatrix" or "Code128", and its middle in
/// whole pixels of the picture as it is shown, x from the left and y from the top.
struct FoundCode {
  std::string text;
  std::string format;
  int x = 0;
  int y = 0;

  bool operator==(const FoundCode&) const = default;
};

/// One picture. `error` says what is wrong with the file and what to do; what could be read of it
/// is listed all the same. Codes come from top to bottom, then from left to right.
struct ReadPicture {
  std::string file;
  std::vector<FoundCode> codes;
  std::optional<std::string> error;

  bool operator==(const ReadPicture&) const = default;
};

} // namespace coneline::labels
