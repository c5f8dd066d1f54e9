// SPDX-License-Identifier: GPL-3.0-or-later
// what-if: a change supposed, the present plan and the supposed one beside each other, and the
// change taken into the book when it is accepted.
#include "core/base/month.h"
#include "core/base/number.h"
#include "core/commands/commands.h"
#include "core/commands/forecast_options.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/plan/fit.h"
#include "core/report/compared_report.h"
#include "core/report/forecast_report.h"
#include "core/report/title_said.h"
#include "core/report/whole_file.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct Asked {
  ForecastOptions plan;
  std::vector<std::string> survival; ///< TAXON:STEP=SHARE
  std::vector<std::string> sooner;   ///< TAXON=0.7 or PLACE=0.7
  std::vector<std::string> place;    ///< NAME:LIGHT:LENGTHxWIDTH
  std::vector<std::string> without;
  std::vector<std::string> mix;    ///< POT=MIX or TAXON:STEP=MIX
  std::vector<std::string> recipe; ///< MIX:bark=4,sand=1
  std::vector<std::string> sow;    ///< CROSS:SEEDS:MONTH
  bool no_cones = false;
  std::string potting;
  std::optional<int> sold_after;
  std::string csv;
  bool accept = false;
};

Fault wrong(const char* option, const std::string& text, const char* form) {
  return usage_fault(fmt::format("{} '{}' is not of that form", option, text),
                     fmt::format("Write {}.", form));
}

Result<plan::Change> survival_of(const std::string& text) {
  constexpr auto form = "TAXON:STEP=SHARE, such as 'Cycas revoluta:2=0.95'; the tray is step 1";
  const auto given = step_given(text);
  const auto share = parse_real(given ? given->value : "");
  if (!share)
    return refuse(wrong("--survival", text, form));
  return plan::OtherSurvival{given->taxon, given->step, *share};
}

Result<plan::Change> pace_of(const std::string& text) {
  const auto equals = text.rfind('=');
  const auto factor = parse_real(text.substr(equals + 1)); // all of it where there is no '='
  if (equals == std::string::npos || !factor)
    return refuse(wrong("--sooner", text, "TAXON=FACTOR or PLACE=FACTOR, such as 'Zamia=0.7'"));
  return plan::OtherPace{text.substr(0, equals), *factor};
}

Result<plan::Change> place_of(const std::string& text) {
  constexpr auto form = "NAME:LIGHT:LENGTHxWIDTH, such as 'New bench:sun:6000x1500', in mm";
  const auto last = text.rfind(':');
  const auto first =
      last == std::string::npos || last == 0 ? std::string::npos : text.rfind(':', last - 1);
  if (first == std::string::npos)
    return refuse(wrong("--place", text, form));
  const auto light = book::read_word<book::Light>(text.substr(first + 1, last - first - 1));
  if (!light)
    return refuse(usage_fault(light.error().what, light.error().remedy));
  const auto sides = text.substr(last + 1);
  const auto by = sides.find('x');
  const auto length = parse_real(sides.substr(0, by));
  const auto width = parse_real(sides.substr(by + 1));
  if (by == std::string::npos || !length || !width)
    return refuse(wrong("--place", text, form));
  return plan::PlaceMore{text.substr(0, first), *light, *length, *width};
}

/// Of a pot, where the book has one of that name, else of a taxon's step.
Result<plan::Change> mix_of(const std::string& text, const book::Registers& registers) {
  const auto equals = text.rfind('=');
  if (equals == std::string::npos)
    return refuse(wrong("--mix", text, "POT=MIX or TAXON:STEP=MIX"));
  const auto left = text.substr(0, equals);
  const auto step = step_given(text);
  if (step && book::named(registers.pots, left) == nullptr)
    return plan::OtherStepMix{step->taxon, step->step, step->value};
  return plan::OtherMix{left, text.substr(equals + 1)};
}

Result<plan::Change> recipe_of(const std::string& text) {
  constexpr auto form = "MIX:PART=SHARE,PART=SHARE, such as 'Growing mix:bark=4,sand=1'";
  const auto colon = text.rfind(':');
  if (colon == std::string::npos)
    return refuse(wrong("--recipe", text, form));
  plan::OtherRecipe recipe{text.substr(0, colon), {}, {}};
  for (const auto& piece : split_at_commas(text.substr(colon + 1))) {
    const auto equals = piece.rfind('=');
    const auto share = parse_real(piece.substr(equals + 1));
    if (equals == std::string::npos || equals == 0 || !share)
      return refuse(wrong("--recipe", text, form));
    recipe.parts.push_back({piece.substr(0, equals), *share});
  }
  return recipe;
}

Result<plan::Change> sowing_of(const std::string& text) {
  const auto given = sowing_given(text);
  if (!given)
    return refuse(given.error());
  return plan::MoreSeed{given->cross, given->seeds, given->month};
}

/// In an order in which a change finds what another brings: recipes before the pots they fill.
Result<plan::Supposition> supposition_of(const Asked& asked, const book::Registers& registers) {
  plan::Supposition all;
  std::optional<Fault> fault;
  const auto add = [&](const std::vector<std::string>& texts, const auto& read) {
    for (const auto& text : texts) {
      if (fault)
        return;
      if (auto change = read(text))
        all.push_back(std::move(*change));
      else
        fault = change.error();
    }
  };
  add(asked.survival, survival_of);
  add(asked.sooner, pace_of);
  add(asked.place, place_of);
  add(asked.without,
      [](const std::string& name) -> Result<plan::Change> { return plan::PlaceLess{name}; });
  add(asked.recipe, recipe_of);
  add(asked.mix, [&](const std::string& text) { return mix_of(text, registers); });
  add(asked.sow, sowing_of);
  if (fault)
    return refuse(*fault);
  if (asked.no_cones)
    all.emplace_back(plan::NoCones{});
  if (!asked.potting.empty()) {
    const auto months = months_of_year(asked.potting);
    if (!months)
      return refuse(months.error());
    all.emplace_back(plan::OtherPotting{*months});
  }
  if (asked.sold_after)
    all.emplace_back(plan::SoldAfter{asked.sold_after});
  if (all.empty())
    return refuse(usage_fault("nothing is supposed",
                              "Name a change, such as --survival 'Cycas revoluta:2=0.95'."));
  return all;
}

std::string range_text(const plan::Likely& likely) {
  return likely.low == 0 && likely.high == 0
             ? "-"
             : fmt::format("{:.0f} - {:.0f} - {:.0f}", likely.low, likely.middle, likely.high);
}

std::string years_text(const plan::Comparison& compared) {
  Table table({"months", "what", "present", "supposed", "difference", "on average"});
  const auto& months = compared.present.months();
  for (const auto& series : compared.series)
    for (std::size_t year = 0; year < series.years.size(); ++year) {
      const auto& row = series.years[year];
      if (row.present.high <= 0 && row.supposed.high <= 0)
        continue;
      const auto first = 12 * year;
      table.row({fmt::format("{} to {}", iso_month(months[first]),
                             iso_month(months[std::min(months.size(), first + 12) - 1])),
                 fmt::format("{} {}", report::word_of(series.name.shown), series.name.name),
                 range_text(row.present), range_text(row.supposed), range_text(row.difference),
                 fmt::format("{:+.1f}", row.mean_difference())});
    }
  return "\nSums of the years (10 - 50 - 90 %)\n" + table.text();
}

std::string full_text(const plan::Comparison& compared) {
  Table table({"light", "m² now", "over full at worst", "m² supposed", "over full at worst"});
  const auto worst = [&](const std::vector<double>& over, std::size_t month) {
    return over[month] <= 0 ? std::string("never")
                            : fmt::format("{:.0f} % in {}", 100 * over[month],
                                          plan::month_name(compared.present.months()[month]));
  };
  for (const auto& light : compared.full)
    table.row({light.name, fmt::format("{:.2f}", light.offered_present),
               worst(light.over_present, light.worst_present),
               fmt::format("{:.2f}", light.offered_supposed),
               worst(light.over_supposed, light.worst_supposed)});
  return "\nRoom by light class\n" + table.text();
}

std::string lines(const std::vector<std::string>& texts, const char* before) {
  std::string all;
  for (const auto& text : texts)
    all += before + text + "\n";
  return all;
}

std::string table_of(const plan::Comparison& compared, const plan::ForecastInput& present,
                     const std::vector<std::string>& told) {
  const auto& title = present.standing.registers.title;
  auto text = fmt::format("What if, {} from {} in {}, {}\n",
                          work::counted(std::ssize(compared.present.months()), "month", "months"),
                          present.standing.today.iso(),
                          work::counted(compared.present.runs(), "future", "futures"),
                          report::title_said(title));
  text += lines(told, "  ");
  text += compared.most.empty() ? "Nothing changes by as much as a two-hundredth.\n"
                                : "What changes most:\n" + lines(compared.most, "  ");
  text += years_text(compared) + full_text(compared) + "\n";
  text += lines(compared.supposed.ways().remarks, "");
  text += "Both plans draw the same futures, so the difference is the change's alone.\n";
  return text;
}

Result<Answer> run(Asked asked, std::ostream& messages) {
  asked.plan.sow_cones |= asked.no_cones; // there must be cones to go without
  const auto present = asked.plan.input();
  if (!present)
    return refuse(present.error());
  const auto supposition = supposition_of(asked, present->standing.registers);
  if (!supposition)
    return refuse(supposition.error());
  const auto supposed = plan::suppose(*present, *supposition);
  if (!supposed)
    return refuse(supposed.error());
  const auto compared = plan::compare(*present, supposed->input, asked.plan.wanted(messages));
  if (!compared)
    return refuse(compared.error());
  if (!asked.csv.empty())
    if (auto written = report::write_whole(
            asked.csv, report::compared_csv(*compared, present->standing.registers.title));
        !written)
      return refuse(written.error());
  const auto& title = present->standing.registers.title;
  Answer answer;
  answer.json = {{"book", title.name},
                 {"invented", title.invented},
                 {"today", present->standing.today.iso()},
                 {"runs", compared->present.runs()},
                 {"seed", asked.plan.seed},
                 {"supposed", supposed->told},
                 {"accepted", asked.accept}};
  answer.json.update(report::compared_json(*compared));
  answer.table = table_of(*compared, *present, supposed->told);
  std::vector<std::string> not_written;
  if (asked.accept) {
    auto book = asked.plan.book.open(store::Access::write);
    if (!book)
      return refuse(book.error());
    const auto records = plan::accept(*book, *present, *supposition);
    if (!records)
      return refuse(records.error());
    not_written = records->not_written;
    answer.table += "Written to the book:\n" + lines(records->told, "  ");
  } else {
    answer.table += "Nothing is written; --accept takes into the book what can be.\n";
    if (const auto records = plan::changes_of(*present, *supposition))
      not_written = records->not_written;
    else
      not_written = {records.error().what + ": " + records.error().remedy};
  }
  answer.json["not_written"] = not_written;
  answer.table += lines(not_written, "");
  return answer;
}

} // namespace

void add_what_if(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("what-if", "Suppose a change and see both plans beside each other",
                           [asked, &line] { return run(*asked, line.messages()); });
  asked->plan.add_present_to(command, 36);
  command.add_option("--survival", asked->survival, "TAXON:STEP=SHARE; the tray is step 1; repeat");
  command.add_option("--sooner", asked->sooner,
                     "TAXON=FACTOR or PLACE=FACTOR: times as long to come up, 0.7 on a hot bench");
  command.add_option("--place", asked->place, "A place more, as NAME:LIGHT:LENGTHxWIDTH in mm");
  command.add_option("--without", asked->without, "A place less, with all that is within it");
  command.add_option("--mix", asked->mix, "POT=MIX for every step into it, or TAXON:STEP=MIX");
  command.add_option("--recipe", asked->recipe,
                     "Other parts of a mix, or a new one: MIX:bark=4,...");
  command.add_flag("--no-cones", asked->no_cones, "The cones that ripen bring no seed");
  command.add_option("--sow", asked->sow, "Seed sown besides, as CROSS:SEEDS:2027-05; repeat");
  command.add_option("--potting-months", asked->potting, "Other months in which you pot, as 3-10");
  command.add_option("--sold-after", asked->sold_after, "Months a ready plant stands");
  command.add_option("--csv", asked->csv, "A file to write both plans to as well");
  command.add_flag("--accept", asked->accept, "Write what can be written, all of it or nothing");
}

} // namespace coneline::commands
