// SPDX-License-Identifier: GPL-3.0-or-later
// coneline tell CODE: all that a label answers, in one look.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/work/tell_label.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

Json or_null(const std::string& text) {
  return text.empty() ? Json() : Json(text);
}

Json json_of(const work::ParentTold& parent) {
  auto papers = Json::array();
  for (const auto& paper : parent.papers)
    papers.push_back({{"kind", paper.kind},
                      {"number", paper.number},
                      {"issued", paper.issued ? Json(paper.issued->iso()) : Json()},
                      {"authority", paper.authority},
                      {"note", paper.note}});
  return {{"code", parent.code.text()},
          {"name", parent.name},
          {"taxon", parent.taxon},
          {"taxon_certainty", parent.certainty.empty() ? "certain" : parent.certainty},
          {"sex", parent.sex},
          {"origin", or_null(parent.origin)},
          {"acquired", parent.acquired ? Json(parent.acquired->iso()) : Json()},
          {"papers", papers}};
}

Json line_of(const work::LabelTold& told) {
  auto line = Json::array();
  for (const auto& step : told.line) {
    auto ended = Json::object();
    for (const auto& [state, count] : step.ended)
      ended[std::string(book::word(state))] = count;
    line.push_back({{"code", step.code.text()},
                    {"what", step.what},
                    {"first", step.first ? Json(step.first->iso()) : Json()},
                    {"in", step.in},
                    {"on_hand", step.on_hand},
                    {"to_this_line", step.to_this_line},
                    {"ended", ended}});
  }
  return line;
}

Json json_of(const work::LabelTold& told) {
  Json json{{"code", told.code.text()},
            {"what", told.what},
            {"title", told.title},
            {"taxon", or_null(told.taxon)},
            {"holds", Json::object()},
            {"ended", or_null(told.ended)},
            {"place", told.place ? Json(*told.place) : Json()},
            {"last_seen", told.last_seen ? Json(told.last_seen->iso()) : Json()},
            {"note", or_null(told.note)},
            {"line", line_of(told)},
            {"itself", told.itself ? json_of(*told.itself) : Json()},
            {"parents_said", or_null(told.parents_said)},
            {"seed_parent", told.seed_parent ? json_of(*told.seed_parent) : Json()},
            {"pollen_parents", Json::array()},
            {"unknown_father", told.unknown_father},
            {"bought", or_null(told.bought)},
            {"due", Json::array()},
            {"here", Json::array()}};
  for (const auto& [state, count] : told.holds)
    json["holds"][state] = count;
  for (const auto& father : told.pollen_parents)
    json["pollen_parents"].push_back(json_of(father));
  for (const auto& due : told.due)
    json["due"].push_back({{"code", due.code.text()},
                           {"from", due.from.iso()},
                           {"to", due.to ? Json(due.to->iso()) : Json()},
                           {"told", due.told}});
  for (const auto& [code, origin] : told.here)
    json["here"].push_back({{"code", code.text()}, {"origin", origin}});
  return json;
}

std::string table_of(std::string_view role, const work::ParentTold& parent) {
  auto text =
      fmt::format("  {:<14}{} · {} · {}{}\n", role, parent.code.text(), parent.name, parent.taxon,
                  parent.certainty.empty() ? "" : " (" + parent.certainty + ")");
  text +=
      fmt::format("  {:<14}origin: {}{}\n", "", parent.origin.empty() ? "not noted" : parent.origin,
                  parent.acquired ? ", since " + parent.acquired->iso() : "");
  for (const auto& paper : parent.papers)
    text += fmt::format("  {:<14}paper: {}\n", "", work::told(paper));
  if (parent.papers.empty())
    text += fmt::format("  {:<14}papers: none noted\n", "");
  return text;
}

std::string step_of(const work::LineStep& step) {
  auto text = fmt::format("  {:<10} {:<11} {:<12}{} in", step.code.text(), step.what,
                          step.first ? step.first->iso() : "", step.in);
  if (step.on_hand > 0)
    text += fmt::format(", {} on hand", step.on_hand);
  for (const auto& [state, count] : step.ended)
    text += fmt::format(", {} {}", count, book::word(state));
  return text + "\n";
}

std::string table_of(const work::LabelTold& told) {
  auto text = fmt::format("{} · {}\n{}{}\n", told.code.text(), told.what, told.title,
                          told.taxon.empty() || told.taxon == told.title ? "" : " · " + told.taxon);
  std::string holds;
  for (const auto& [state, count] : told.holds)
    holds += fmt::format("{}{} {}", holds.empty() ? "" : ", ", count, state);
  const auto say = [&](std::string_view name, const std::string& value) {
    if (!value.empty())
      text += fmt::format("  {:<14}{}\n", name, value);
  };
  say("holds", holds);
  say("", told.ended);
  say("where", told.place.value_or(""));
  say("last seen", told.last_seen ? told.last_seen->iso() : "");
  say("bought", told.bought);
  say("note", told.note);
  for (const auto& due : told.due)
    say("due", fmt::format("{}{}: {}", due.from.iso(),
                           due.code == told.code ? "" : " " + due.code.text(), due.told));
  if (told.due.empty())
    say("due", "nothing");
  if (told.itself)
    text += table_of("the plant", *told.itself);
  say("parents", told.parents_said);
  if (told.seed_parent)
    text += table_of("seed parent", *told.seed_parent);
  for (const auto& father : told.pollen_parents)
    text += table_of("pollen parent", father);
  if (told.unknown_father)
    say("pollen parent", "not known, for some or all of the pollen");
  if (!told.line.empty())
    text += "its line\n";
  for (const auto& step : told.line)
    text += step_of(step);
  for (const auto& [code, origin] : told.here)
    say(code.text(), origin);
  return text;
}

struct TellOptions {
  BookOption book;
  std::string code;
  std::string on;
};

Result<Answer> tell(const TellOptions& options) {
  auto day = date_or_today(options.on, "--on");
  if (!day)
    return refuse(day.error());
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  auto code = code_given(*book, options.code);
  if (!code)
    return refuse(code.error());
  return book
      ->read([&](store::Reading& reading) {
        return work::tell_label(reading, reading.registers(), *code, *day);
      })
      .map([](const work::LabelTold& told) {
        return Answer{json_of(told), table_of(told)};
      });
}

} // namespace

void add_tell(CommandLine& line) {
  const auto options = std::make_shared<TellOptions>();
  auto& command = line.add("tell",
                           "What any label answers: what, how many, where, its line, its parents "
                           "with origin and papers, what is due",
                           [options] { return tell(*options); });
  options->book.add_to(command);
  command.add_option("code", options->code, "The code on the label").required();
  command.add_option("--on", options->on, "The day; today when left out");
}

} // namespace coneline::commands
