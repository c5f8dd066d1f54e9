// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/seen_there.h"

#include "core/base/phrase.h"
#include "core/work/find_code.h"
#include "core/work/lot_ended.h"
#include "core/work/origin_said.h"
#include "core/work/overview.h"
#include "core/work/relocate.h"
#include "core/work/resolve.h"
#include "core/work/round.h"

#include <fmt/format.h>

#include <set>

namespace coneline::work {

namespace {

bool is_lot(const Code& code) {
  return code.kind() == Kind::batch || code.kind() == Kind::tray || code.kind() == Kind::pot_group;
}

/// Collects what was seen, and compares it with the book.
class Compare {
 public:
  Compare(store::Reading& reading, const book::Registers& registers)
      : reading_(reading), registers_(registers) {
    for (auto& line : lot_lines(reading, registers))
      lines_.emplace(line.lot.id, std::move(line));
  }

  /// The code of a label, or nothing; then it is told why.
  std::optional<Code> code_of(const ReadLabel& label) {
    const auto code = find_code(reading_, registers_, label.text);
    if (code)
      return *code;
    leave_out(label, code.error().text());
    return std::nullopt;
  }

  const book::Place* place_of(const Code& code) const {
    return book::coded(registers_.places, code);
  }

  void look_at(book::PlaceId place) { looked_at_.insert(place); }

  /// A lot's label; `place` none: where the book has it.
  void see(const ReadLabel& label, const Code& code, std::optional<book::PlaceId> place) {
    if (!is_lot(code))
      return leave_out(
          label, phrase("the label of a {}, which stands in no round", kind_said(code.kind())));
    const auto lot = reading_.lot(code).value();
    if (const auto ended = refuse_ended(reading_, lot); !ended)
      return leave_out(label, ended.error().text());
    if (lines_.at(lot.id).since > label.on)
      return leave_out(label, refuse_not_begun(reading_, lot, label.on).error().text());
    const auto by_book = stood(lot.id, label.on);
    if (!place)
      place = by_book;
    if (!place)
      return leave_out(label,
                       phrase("{} has no place in the book, and none was named", code.text()));
    auto& seen = seen_[lot.id];
    if (seen.lot.stored() && seen.place != *place && seen.on == label.on)
      doubt_[lot.id] = phrase("on the same day it was seen on {} too ({})",
                              registers_.place(seen.place).name, seen.source);
    if (seen.lot.stored() && seen.on > label.on)
      return;
    seen = {code,   lot.id,       origin_said(lines_.at(lot.id).origin.name),
            *place, label.source, label.on};
  }

  void leave_out(const ReadLabel& label, std::string why) {
    if (told_.insert({label.text, label.source}).second)
      found_.unplaced.push_back({label.text, label.source, std::move(why)});
  }

  SeenThere made() {
    for (const auto& [lot, seen] : seen_) {
      found_.seen.push_back(seen);
      propose(seen);
    }
    const auto last_seen = reading_.last_seen();
    for (const auto& [lot, line] : lines_) {
      const bool here = std::ranges::any_of(
          looked_at_, [&](auto place) { return is_within(registers_, line.place, place); });
      if (!here || line.total() == 0 || line.lot.code.kind() != Kind::tray || seen_.contains(lot))
        continue;
      const auto before = last_seen.find(lot);
      found_.not_seen.push_back(
          {line.lot.code, origin_said(line.origin.name), line.place,
           before == last_seen.end() ? std::nullopt : std::optional(before->second)});
    }
    return std::move(found_);
  }

 private:
  std::optional<book::PlaceId> stood(book::LotId lot, Date day) {
    const auto [places, is_new] = places_.try_emplace(day);
    if (is_new)
      places->second = reading_.places(day);
    const auto found = places->second.find(lot);
    return found == places->second.end() ? std::nullopt : std::optional(found->second);
  }

  void propose(const SeenLot& seen) {
    const auto from = stood(seen.lot, seen.on);
    if (is_within(registers_, from, seen.place))
      return;
    const auto now = lines_.at(seen.lot).place;
    if (is_within(registers_, now, seen.place))
      return; // moved there since: the book knows
    ProposedMove move{seen.code, from, seen.place, seen.on, seen.source, doubt_[seen.lot]};
    if (now != from && now)
      move.doubt = phrase("the book has it on {} since then", registers_.place(*now).name);
    found_.moves.push_back(std::move(move));
  }

  store::Reading& reading_;
  const book::Registers& registers_;
  SeenThere found_;
  std::map<book::LotId, LotLine> lines_;
  std::map<book::LotId, SeenLot> seen_;
  std::map<book::LotId, std::string> doubt_;
  std::map<Date, std::unordered_map<book::LotId, book::PlaceId>> places_;
  std::set<std::pair<std::string, std::string>> told_;
  std::set<book::PlaceId> looked_at_;
};

Result<const book::Place*> place_given(const Compare& compare, const Code& code) {
  const auto* place = compare.place_of(code);
  if (place == nullptr)
    return refuse(fault(phrase("{} is no place of this book", code.text()),
                        "Give the code of a house, bench or bay (H…)."));
  return place;
}

} // namespace

Result<SeenThere> seen_in_pictures(store::Reading& reading, const book::Registers& registers,
                                   const Code& place, const std::vector<ReadLabel>& labels) {
  Compare compare(reading, registers);
  const auto given = place_given(compare, place);
  if (!given)
    return refuse(given.error());
  compare.look_at((*given)->id);
  std::map<std::string, std::set<book::PlaceId>> benches;
  std::vector<std::pair<const ReadLabel*, Code>> lots;
  for (const auto& label : labels) {
    const auto code = compare.code_of(label);
    if (!code)
      continue;
    const auto* bench = compare.place_of(*code);
    if (bench == nullptr)
      lots.emplace_back(&label, *code);
    else if (is_within(registers, bench->id, (*given)->id))
      benches[label.source].insert(bench->id);
    else
      compare.leave_out(label, phrase("{} is not within {}: look whether the picture was "
                                      "taken there",
                                      bench->name, (*given)->name));
  }
  for (const auto& [label, code] : lots) {
    const auto& own = benches[label->source];
    compare.see(*label, code, own.size() == 1 ? *own.begin() : (*given)->id);
  }
  return compare.made();
}

Result<SeenThere> seen_in_log(store::Reading& reading, const book::Registers& registers,
                              const std::optional<Code>& place,
                              const std::vector<ReadLabel>& labels) {
  Compare compare(reading, registers);
  std::optional<book::PlaceId> at;
  if (place) {
    const auto given = place_given(compare, *place);
    if (!given)
      return refuse(given.error());
    at = (*given)->id;
    compare.look_at(*at);
  }
  for (const auto& label : labels) {
    const auto code = compare.code_of(label);
    if (!code)
      continue;
    if (const auto* bench = compare.place_of(*code)) {
      at = bench->id;
      compare.look_at(*at);
    } else {
      compare.see(label, *code, at);
    }
  }
  return compare.made();
}

Result<std::int64_t> note_seen(store::Book& book, const SeenThere& found, book::SeenBy how) {
  return book.write([&](store::Writing& writing) -> Result<std::int64_t> {
    std::int64_t fresh = 0;
    for (const auto& seen : found.seen) {
      auto noted = writing.see({{}, seen.lot, seen.place, seen.on, how, seen.source, {}});
      if (!noted)
        return refuse(noted.error());
      fresh += *noted ? 1 : 0;
    }
    return fresh;
  });
}

Result<Done> accept_moves(store::Book& book, const std::vector<ProposedMove>& moves,
                          const std::string& who) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    Done done;
    for (const auto& move : moves) {
      auto moved = relocate(writing, Relocate{{move.code},
                                              registers.place(move.to).code,
                                              {move.on, who, "seen there: " + move.source}});
      if (!moved)
        return moved;
      done.entries.push_back(moved->entries.front());
      done.cautions = moved->cautions;
    }
    done.told = moves.empty() ? phrase("nothing to move")
                              : phrase_n(static_cast<std::int64_t>(moves.size()), "{} lot moved",
                                         "{} lots moved");
    return done;
  });
}

} // namespace coneline::work
