// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the trade in plants is bound by, as data with source and date: in which appendix of CITES a
// taxon is listed, and rules in words. Not legal advice: the authority decides. The program brings
// a file of its own (core/report/data/trade_rules.csv); a grower may give a newer one of the same
// form.

#include "core/base/date.h"
#include "core/base/fault.h"

#include <filesystem>
#include <string>
#include <vector>

namespace coneline::report {

struct TradeRule {
  enum class Kind { listing, rule } kind = Kind::listing;
  std::string name; ///< of a listing a genus ("Dioon") or a species ("Cycas beddomei")
  std::string says; ///< of a listing the appendix: "I", "II", "III"
  std::string source;
  Date as_of; ///< when it was looked up
};

/// The rules that come with the program.
const std::vector<TradeRule>& built_in_trade_rules();

/// From a file with the columns kind, name, says, source, as_of. Fails with file, line and column.
Result<std::vector<TradeRule>> trade_rules_of(const std::filesystem::path& file);

/// The listing of a taxon: that of its species, or else of its genus; null where there is none.
const TradeRule* listing_of(const std::vector<TradeRule>& rules, std::string_view taxon);

} // namespace coneline::report
