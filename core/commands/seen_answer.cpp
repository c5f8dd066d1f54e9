// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/seen_answer.h"

#include "core/commands/table.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

class Words {
 public:
  explicit Words(const book::Registers& registers) : registers_(registers) {}

  std::string place(std::optional<book::PlaceId> id) const {
    return id ? registers_.place(*id).name : "no place";
  }
  Json code(std::optional<book::PlaceId> id) const {
    return id ? Json(registers_.place(*id).code.text()) : Json();
  }

  Json json(const work::SeenThere& found) const {
    Json json{{"seen", Json::array()},
              {"not_seen", Json::array()},
              {"moves", Json::array()},
              {"not_placed", Json::array()}};
    for (const auto& seen : found.seen)
      json["seen"].push_back({{"code", seen.code.text()},
                              {"place", code(seen.place)},
                              {"on", seen.on.iso()},
                              {"source", seen.source}});
    for (const auto& each : found.not_seen)
      json["not_seen"].push_back(
          {{"code", each.code.text()},
           {"place", code(each.place)},
           {"last_seen", each.last_seen ? Json(each.last_seen->iso()) : Json()}});
    for (const auto& move : found.moves)
      json["moves"].push_back({{"code", move.code.text()},
                               {"from", code(move.from)},
                               {"to", code(move.to)},
                               {"on", move.on.iso()},
                               {"source", move.source},
                               {"doubt", move.doubt.empty() ? Json() : Json(move.doubt)}});
    for (const auto& each : found.unplaced)
      json["not_placed"].push_back(
          {{"text", each.text}, {"source", each.source}, {"why", each.why}});
    return json;
  }

  std::string table(const work::SeenThere& found) const {
    std::string text;
    Table seen({"seen", "where", "on", "in"});
    for (const auto& each : found.seen)
      seen.row({each.code.text(), place(each.place), each.on.iso(), each.source});
    Table not_seen({"not seen", "should be", "last seen", "what"});
    for (const auto& each : found.not_seen)
      not_seen.row({each.code.text(), place(each.place),
                    each.last_seen ? each.last_seen->iso() : "never", each.origin});
    Table moves({"move", "from", "to", "on", "look twice"});
    for (const auto& each : found.moves)
      moves.row({each.code.text(), place(each.from), place(each.to), each.on.iso(), each.doubt});
    Table unplaced({"not placed", "in", "why"});
    for (const auto& each : found.unplaced)
      unplaced.row({each.text, each.source, each.why});
    const auto add = [&](bool any, const Table& table) {
      if (any)
        text += table.text() + "\n";
    };
    add(!found.seen.empty(), seen);
    add(!found.not_seen.empty(), not_seen);
    add(!found.moves.empty(), moves);
    add(!found.unplaced.empty(), unplaced);
    return text;
  }

 private:
  const book::Registers& registers_;
};

} // namespace

Result<Answer> seen_answer(store::Book& book, const work::SeenThere& found, book::SeenBy how,
                           Moves moves, const std::string& who) {
  const auto fresh = work::note_seen(book, found, how);
  if (!fresh)
    return refuse(fresh.error());
  const auto registers = book.read([](store::Reading& reading) { return reading.registers(); });
  if (!registers)
    return refuse(registers.error());
  const Words words(*registers);
  Answer answer{words.json(found), words.table(found)};
  answer.json["newly_noted"] = *fresh;
  answer.json["moved"] = Json::array();
  answer.table +=
      fmt::format("{} seen, {} not seen, {} moves proposed, {} not placed.\n", found.seen.size(),
                  found.not_seen.size(), found.moves.size(), found.unplaced.size());
  if (moves == Moves::propose) {
    if (!found.moves.empty())
      answer.table += "Nothing was moved in the book. To enter the moves: --accept\n";
    return answer;
  }
  const auto done = work::accept_moves(book, found.moves, who);
  if (!done)
    return refuse(done.error());
  for (const auto& entry : done->entries)
    answer.json["moved"].push_back(entry.value);
  answer.table += done->told + ".\n";
  return answer;
}

} // namespace coneline::commands
