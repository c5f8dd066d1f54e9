// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/plan/mix.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct MixOptions {
  plan::MixOrder order;
  std::string parts;
};

Result<std::vector<plan::MixPart>> parts_of(const std::string& text) {
  std::vector<plan::MixPart> parts;
  for (const auto& piece : split_at_commas(text)) {
    const auto equals = piece.find('=');
    const auto amount =
        parse_real(equals == std::string::npos ? std::string_view{}
                                               : std::string_view(piece).substr(equals + 1));
    if (equals == 0 || !amount || !is_utf8(piece))
      return refuse(usage_fault(fmt::format("--parts: '{}' is no part with an amount",
                                            is_utf8(piece) ? piece : "a piece that is no UTF-8"),
                                "Write name=amount, such as bark=4,peat=3,sand=3."));
    parts.push_back({piece.substr(0, equals), *amount});
  }
  return parts;
}

std::string table_of(const plan::Mix& mix, const plan::MixOrder& order) {
  Table table({"part", "litres"});
  double loose = 0;
  for (const auto& part : mix.parts) {
    table.row({part.name, shown(part.amount, 1)});
    loose += part.amount;
  }
  return table.text() +
         fmt::format("{:.1f} litres of parts make {:.1f} litres of mix for {} pots.\n"
                     "Caution: dry mix dusts and can carry Legionella. Wet it, wear mask and "
                     "gloves, open bags away from the face, wash hands.\n",
                     loose, mix.finished_litres, order.pots);
}

Result<Answer> run(const MixOptions& options) {
  auto parts = parts_of(options.parts);
  if (!parts)
    return refuse(parts.error());
  auto order = options.order;
  order.parts = std::move(*parts);
  const auto mix = plan::mix_for(order);
  if (!mix)
    return refuse(mix.error());
  Answer answer;
  answer.json["finished_litres"] = mix->finished_litres;
  answer.json["parts"] = Json::array();
  for (const auto& part : mix->parts)
    answer.json["parts"].push_back({{"name", part.name}, {"litres", part.amount}});
  answer.table = table_of(*mix, order);
  return answer;
}

} // namespace

void add_mix(CommandLine& line) {
  const auto options = std::make_shared<MixOptions>();
  auto& order = options->order;
  auto& command = line.add("mix", "How much of each part to mix for so many pots",
                           [options] { return run(*options); });
  whole_option(command, "--pots", order.pots, "Pots to fill").required();
  real_option(command, "--litres", order.litres, "Real litres of one pot").required();
  command.add_option("--parts", options->parts, "Parts by volume, as bark=4,peat=3,sand=3")
      .required();
  real_option(command, "--shrink", order.shrink,
              "Share of the volume lost when the parts are mixed; 0.15 unless said");
  real_option(command, "--loss", order.loss, "Share spilled and left over; 0 unless said");
  real_option(command, "--rootball", order.rootball,
              "Litres of root ball in each pot; 0 unless said");
}

} // namespace coneline::commands
