// SPDX-License-Identifier: GPL-3.0-or-later
// crosses: which crosses could be made with the cones and the pollen there are, and a proposal.
#include "core/base/number.h"
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/report/crossing_input.h"
#include "core/report/crossing_report.h"
#include "core/report/title_said.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string as_of;
  std::vector<std::string> females;
  bool every_female = false;
  std::string aim = "plants";
  double weight = 0.5;
  std::optional<int> crosses;
  std::vector<std::string> pins;
  std::vector<std::string> forbids;
  bool hybrids = false;
  double most_kinship = 0.125;
  std::optional<double> millilitres;
  std::optional<double> seeds;
  std::vector<std::string> room;
};

Result<std::map<book::Light, double>> room_given(const std::vector<std::string>& texts) {
  std::map<book::Light, double> room;
  for (const auto& text : texts) {
    const auto equals = text.find('=');
    const auto light = book::read_word<book::Light>(text.substr(0, equals));
    if (!light)
      return refuse(of_option("--room", light.error()));
    const auto square_metres =
        parse_real(equals == std::string::npos ? "" : text.substr(equals + 1));
    if (!square_metres || *square_metres < 0)
      return refuse(of_option("--room", fault(fmt::format("'{}' names no square metres", text),
                                              "Write it as 'part shade=12.5', or 'any'.")));
    room[*light] = *square_metres;
  }
  return room;
}

plan::Aim aim_of(const std::string& word) {
  return word == "kinship"   ? plan::Aim::least_kinship
         : word == "mixture" ? plan::Aim::mixture
                             : plan::Aim::most_plants;
}

/// The crosses that pins or bans name, each as CONE=POLLEN.
Result<std::vector<std::size_t>> named(store::Book& book, const plan::CrossingInput& input,
                                       const std::vector<plan::PossibleCross>& possible,
                                       const std::vector<std::string>& texts,
                                       std::string_view option) {
  std::vector<std::size_t> places;
  for (const auto& text : texts) {
    const auto equals = text.find('=');
    if (equals == std::string::npos)
      return refuse(of_option(option, fault(fmt::format("'{}' names no cross", text),
                                            "Write it as CONE=POLLEN, such as C171K=L172I.")));
    const auto female = code_given(book, text.substr(0, equals));
    if (!female)
      return refuse(of_option(option, female.error()));
    const auto pollen = code_given(book, text.substr(equals + 1));
    if (!pollen)
      return refuse(of_option(option, pollen.error()));
    const auto place = report::cross_meant(input, possible, *female, *pollen);
    if (!place)
      return refuse(of_option(option, place.error()));
    places.push_back(*place);
  }
  return places;
}

std::string state_of(const plan::CrossingWish& wish, const plan::Proposal& proposal,
                     const plan::PossibleCross& cross, std::size_t at) {
  const auto holds = [&](const auto& list) { return std::ranges::find(list, at) != list.end(); };
  if (holds(wish.pinned))
    return "pinned";
  if (holds(wish.forbidden))
    return "forbidden";
  if (holds(proposal.chosen))
    return "proposed";
  return plan::why_not(cross, wish);
}

std::string table_of(const plan::CrossingInput& input,
                     const std::vector<plan::PossibleCross>& possible,
                     const plan::CrossingWish& wish, const plan::Proposal& proposal) {
  std::string text = fmt::format("Crosses as of {}, {}\n", input.today.iso(),
                                 report::title_said(input.registers.title));
  Table table({"cone", "pollen", "cross", "kinship", "offspring's mean kinship", "founders",
               "plants", "pollen left, ml", "state"});
  for (std::size_t at = 0; at < possible.size(); ++at) {
    const auto& cross = possible[at];
    if (cross.hybrid && !wish.hybrids &&
        state_of(wish, proposal, cross, at) == plan::why_not(cross, wish))
      continue; // told as a number below; --json lists them all
    const auto& lot = input.pollen[cross.pollen];
    table.row({input.females[cross.female].code.text(), lot.code.text(),
               cross.name + (cross.hybrid ? " [" + cross.taxon + "]" : ""),
               fmt::format("{:.4g}", cross.kinship), fmt::format("{:.4g}", cross.mean_kinship),
               std::to_string(cross.founders.size()), report::estimate_text(cross.plants),
               lot.millilitres ? fmt::format("{:g}", *lot.millilitres) : "–",
               state_of(wish, proposal, cross, at)});
  }
  text += table.text();
  const auto hybrids = std::ranges::count_if(possible, &plan::PossibleCross::hybrid);
  if (hybrids > 0 && !wish.hybrids)
    text += fmt::format("{} possible hybrids are not listed; --hybrids lists and proposes them.\n",
                        hybrids);
  text += fmt::format("\nProposal: {} crosses, {:.0f} plants likely, {} founders{}\n",
                      proposal.chosen.size(), proposal.plants, proposal.founders,
                      proposal.mean_kinship ? fmt::format(", mean kinship of the offspring {:.4g}",
                                                          *proposal.mean_kinship)
                                            : "");
  text += "  " + report::bound_text(proposal) + "\n";
  for (const auto at : proposal.chosen) {
    const auto& cross = possible[at];
    const auto& female = input.females[cross.female];
    text += fmt::format("  {} ({}) with {}: {}, {}\n", female.code.text(), female.when,
                        input.pollen[cross.pollen].code.text(), cross.name,
                        report::estimate_text(cross.plants));
    for (const auto& missing : cross.missing)
      text += fmt::format("    missing: {}\n", missing);
    for (const auto& remark : cross.remarks)
      text += fmt::format("    {}\n", remark);
  }
  for (const auto& [light, taken] : proposal.room)
    text += fmt::format("  room: {:.2f} m² of {}{}\n", taken, book::word(light),
                        input.room && input.room->contains(light)
                            ? fmt::format(" of {:.2f} free", input.room->at(light))
                            : "");
  for (const auto& row : report::kinship_by_taxon(input))
    text +=
        fmt::format("{}: {} plants, {} founders, mean kinship {:.4g}, founder genome "
                    "equivalents {:.3g}\n",
                    row.taxon, row.plants, row.founders, row.mean_kinship, row.genome_equivalents);
  for (const auto& [code, why] : input.left_out)
    text += fmt::format("Left out: {}: {}\n", code.text(), why);
  for (const auto& remark : input.remarks)
    text += remark + "\n";
  for (const auto& rule : report::crossing_rules())
    text += rule + "\n";
  return text;
}

Result<plan::CrossingInput> input_of(store::Book& book, const Asked& asked, Date today) {
  report::CrossingAsked wanted;
  wanted.today = today;
  wanted.every_female = asked.every_female;
  wanted.millilitres_a_cone = asked.millilitres;
  wanted.seeds_a_cone = asked.seeds;
  wanted.any_room = asked.room == std::vector<std::string>{"any"};
  if (!asked.room.empty() && !wanted.any_room) {
    auto room = room_given(asked.room);
    if (!room)
      return refuse(room.error());
    wanted.room = *room;
  }
  for (const auto& typed : asked.females) {
    const auto code = code_given(book, typed);
    if (!code)
      return refuse(of_option("--female", code.error()));
    wanted.females.push_back(*code);
  }
  auto input =
      book.read([&](store::Reading& reading) { return report::crossing_input(reading, wanted); });
  return input;
}

Result<Answer> run_crosses(const Asked& asked) {
  for (const auto& [value, option] :
       {std::pair(asked.millilitres, "--millilitres"), std::pair(asked.seeds, "--seeds")})
    if (value && !(*value > 0))
      return refuse(
          of_option(option, fault(fmt::format("{:g}", *value), "Give a number above 0.")));
  const auto today = date_or_today(asked.as_of, "--as-of");
  if (!today)
    return refuse(today.error());
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto input = input_of(*book, asked, *today);
  if (!input)
    return refuse(input.error());
  const auto possible = plan::possible_crosses(*input);
  if (!possible)
    return refuse(possible.error());
  plan::CrossingWish wish;
  wish.aim = aim_of(asked.aim);
  wish.kinship_weight = asked.weight;
  wish.crosses = asked.crosses;
  wish.hybrids = asked.hybrids;
  wish.most_kinship = asked.most_kinship;
  auto pinned = named(*book, *input, *possible, asked.pins, "--pin");
  if (!pinned)
    return refuse(pinned.error());
  wish.pinned = *pinned;
  auto forbidden = named(*book, *input, *possible, asked.forbids, "--forbid");
  if (!forbidden)
    return refuse(forbidden.error());
  wish.forbidden = *forbidden;
  const auto proposal = plan::propose(*input, *possible, wish);
  if (!proposal)
    return refuse(proposal.error());
  return Answer{report::crossing_json(*input, *possible, wish, *proposal),
                table_of(*input, *possible, wish, *proposal)};
}

} // namespace

void add_crosses(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("crosses", "Which crosses to make with the cones and pollen there are",
                           [asked] { return run_crosses(*asked); });
  asked->book.add_to(command);
  command.add_option("--as-of", asked->as_of, "The day to choose on; today when left out");
  command.add_option("--female", asked->females, "A female plant whose cone is expected; repeat");
  command.add_flag("--every-female", asked->every_female,
                   "As though every female of the register would cone");
  command.add_option("--aim", asked->aim, "plants (most), kinship (least) or mixture")
      .one_of({"plants", "kinship", "mixture"})
      .told_default();
  command.add_option("--weight", asked->weight, "Of kinship in a mixture, 0 to 1").told_default();
  command.add_option("--crosses", asked->crosses,
                     "How many: at most for plants, just so many for the other aims");
  command.add_option("--pin", asked->pins, "A cross to make whatever else, CONE=POLLEN; repeat");
  command.add_option("--forbid", asked->forbids, "A cross not to make, CONE=POLLEN; repeat");
  command.add_flag("--hybrids", asked->hybrids, "Crosses between taxa may be proposed");
  command
      .add_option("--most-kinship", asked->most_kinship,
                  "Closer parents are not proposed; half sibs are 0.125 (common practice)")
      .told_default();
  command.add_option("--millilitres", asked->millilitres,
                     "Pollen for one cone, all passes together; from the book when left out");
  command.add_option("--seeds", asked->seeds,
                     "Seeds of a cone, for taxa whose cones were never counted");
  command.add_option("--room", asked->room,
                     "Room to plan within, such as 'part shade=12.5' (m²); repeat; 'any' for no "
                     "limit; from the book when left out");
}

} // namespace coneline::commands
