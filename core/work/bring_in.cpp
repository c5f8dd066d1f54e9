// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/bring_in.h"

#include "core/base/phrase.h"
#include "core/book/names.h"
#include "core/work/known_or_new.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

#include <tuple>

namespace coneline::work {

namespace {

using Key = std::tuple<std::string, std::string, std::string, std::string, std::optional<Date>,
                       std::optional<Date>, std::string, std::size_t>;

// What stands in the book is a record: the same words in every language.
constexpr auto nobody_said = "not known";
constexpr auto earlier_list = "from an earlier list";

template <class Outcome>
Outcome in(const char* part, Outcome outcome) {
  if (!outcome)
    outcome = Outcome(tl::unexpect, outcome.error().at({"", 0, part}));
  return outcome;
}

tl::unexpected<Fault> wrong(const char* part, std::string what, std::string remedy) {
  return refuse(fault(std::move(what), std::move(remedy)).at({"", 0, part}));
}

/// `unknown` stands for a parent that the line does not name.
std::string parents_of(const BroughtIn& line, const std::string& unknown) {
  if (line.seed_parent.empty() && line.pollen_parent.empty())
    return {};
  return (line.seed_parent.empty() ? unknown : line.seed_parent) + " × " +
         (line.pollen_parent.empty() ? unknown : line.pollen_parent);
}

std::string joined(std::string first, const std::string& second) {
  return first.empty() || second.empty() ? first + second : first + "; " + second;
}

/// The line's note, with what it says that its kind has no other place for. A record: in the words
/// of the book, not in those of the window.
std::string note_of(const BroughtIn& line) {
  const bool plant = line.kind == Kind::plant;
  const bool tray = line.kind == Kind::tray;
  const bool from_cone = (tray || line.kind == Kind::batch) && !line.seed_parent.empty();
  auto note = line.note;
  const auto keep = [&](bool lost, const char* what, const std::string& said) {
    if (lost && !said.empty())
      note = joined(note, fmt::format("{}: {}", what, said));
  };
  const auto iso = [](const std::optional<Date>& day) { return day ? day->iso() : std::string(); };
  const auto number = [](Count count) {
    return count.none() ? std::string() : std::to_string(count.value());
  };
  keep(!plant, "name", line.name);
  keep(!plant && line.sex != book::Sex::not_known, "sex", std::string(book::word(line.sex)));
  keep(plant, "parents", parents_of(line, nobody_said));
  keep(plant || line.kind == Kind::pot_group, "cone", line.cone);
  keep(from_cone, "from", line.supplier);
  keep(!from_cone, "pollinated", iso(line.pollinated));
  keep(!from_cone, "harvested", iso(line.harvested));
  keep(line.kind == Kind::batch && line.harvested && line.place.empty(), "there since",
       iso(line.since));
  keep(plant, "count", number(line.count));
  keep(!tray, "seedlings", number(line.seedlings));
  keep(!tray, "seen", iso(line.seen));
  keep(plant || line.kind == Kind::batch, "pot", line.pot);
  return note;
}

Result<void> days_in_order(const BroughtIn& line, Date today) {
  std::optional<std::pair<Date, const char*>> before;
  for (const auto& [day, part] : {std::pair(line.pollinated, "pollinated"),
                                  {line.harvested, "harvested"},
                                  {line.since, "since"},
                                  {line.seen, "seen"}}) {
    if (!day)
      continue;
    if (auto is = in(part, not_ahead(*day, today)); !is)
      return is;
    if (before && *day < before->first)
      return wrong(part,
                   phrase_n(days_between(*day, before->first),
                            "{1} is {0} day before the day {2} ({3})",
                            "{1} is {0} days before the day {2} ({3})", day->said(),
                            phrase_of(before->second), before->first.said()),
                   phrase("Check the days."));
    before = {*day, part};
  }
  return {};
}

/// What must stand in a line before anything is made of it.
Result<void> whole(const BroughtIn& line, Date today) {
  if (line.kind == Kind::plant)
    return line.name.empty() ? Result<void>(wrong("name", phrase("a parent plant without a name"),
                                                  phrase("Write what it is called.")))
                             : days_in_order(line, today);
  if (line.count.none())
    return wrong("count", phrase("a count of 0 or none"),
                 phrase("Write how many there are, or leave the row out."));
  if (line.seedlings > line.count)
    return wrong("seedlings",
                 phrase("{} up of {} sown: {} too many", line.seedlings.value(), line.count.value(),
                        line.seedlings - line.count),
                 phrase("Correct the seedlings or the seeds sown."));
  if (!line.since && (line.kind != Kind::batch || !line.harvested))
    return wrong("since", phrase("no day"),
                 line.kind == Kind::tray ? phrase("Write when it was sown.")
                                         : phrase("Write since when it is there."));
  if (!line.pollen_parent.empty() && line.seed_parent.empty() && line.kind != Kind::pot_group)
    return wrong("seed parent", phrase("a pollen parent without a seed parent"),
                 phrase("Write which plant bore the cone."));
  if (!line.pollen_parent.empty() && !line.pollinated && line.kind != Kind::pot_group)
    return wrong("pollinated", phrase("a pollen parent without the day of pollination"),
                 phrase("Write the day, as near as is known, or give one day for all rows."));
  return days_in_order(line, today);
}

class Bringing {
 public:
  Bringing(store::Writing& writing, std::span<const BroughtIn> lines, Date today)
      : writing_(writing), lines_(lines), today_(today), known_(writing, earlier_list) {}

  BroughtAll run(const std::function<bool(std::size_t)>& go_on) && {
    for (std::size_t i = 0; i < lines_.size(); ++i)
      if (has_batch(lines_[i]))
        together_[key_of(i)].push_back(i);
    for (std::size_t i = 0; i < lines_.size() && !all_.stopped; ++i) {
      all_.lines.push_back(bring(i));
      all_.stopped = go_on && !go_on(i + 1);
    }
    const auto& news = known_.news();
    all_.taxa = news.taxa;
    all_.plants = news.plants;
    all_.places = news.places;
    all_.pots = news.pots;
    return std::move(all_);
  }

 private:
  /// The cone or purchase that lines share, and the batch they were or are in.
  struct Begun {
    book::Origin origin;
    book::Lot batch;
  };

  /// What the lines of one cone say together of its harvest.
  struct Beginning {
    Date day;
    Count count;
    std::string note;
  };

  static PotSaid pot_said(const BroughtIn& line) {
    return {line.pot, line.litres, line.width_mm,
            line.kind == Kind::tray ? book::Shape::rectangular : book::Shape::round};
  }

  static bool has_batch(const BroughtIn& line) {
    return line.kind == Kind::batch || line.kind == Kind::tray;
  }

  /// Lines of the same cross and days are one cone unless the list says otherwise; without a cross
  /// only the list's own word and the supplier hold lines together.
  [[nodiscard]] Key key_of(std::size_t i) const {
    const auto& line = lines_[i];
    const bool bought = line.seed_parent.empty();
    return {line.taxon,
            line.seed_parent,
            line.pollen_parent,
            line.cone,
            line.pollinated,
            line.harvested,
            bought ? line.supplier : std::string(),
            bought && line.cone.empty() ? i + 1 : std::size_t{0}};
  }

  Result<Brought> bring(std::size_t i) {
    const auto& line = lines_[i];
    if (auto is = whole(line, today_); !is)
      return refuse(is.error());
    switch (line.kind) {
    case Kind::plant:
      return bring_plant(line);
    case Kind::pot_group:
      return bring_pots(line);
    default:
      return bring_seed(i);
    }
  }

  Result<Brought> bring_plant(const BroughtIn& line) {
    if (book::named(known_.registers().plants, line.name) != nullptr)
      return wrong("name", phrase("a plant called '{}' is there already", line.name),
                   phrase("Leave the row out, or give another name."));
    auto taxon = in("taxon", known_.taxon(line.taxon));
    if (!taxon)
      return refuse(taxon.error());
    auto place = in("place", known_.place(line.place));
    if (!place)
      return refuse(place.error());
    book::Plant plant;
    plant.name = line.name;
    plant.taxon = *taxon;
    plant.sex = line.sex;
    plant.origin = line.supplier;
    plant.acquired = line.since;
    plant.place = *place;
    plant.note = note_of(line);
    auto added = known_.add(plant);
    if (!added)
      return refuse(added.error());
    return Brought{
        {added->code},
        phrase("plant {}: {}, {}, {}", added->code.text(), line.name, line.taxon,
               line.sex == book::Sex::not_known ? phrase("sex not known") : book::said(line.sex))};
  }

  Result<Brought> bring_pots(const BroughtIn& line) {
    auto pot = in("pot", known_.pot(pot_said(line)));
    if (!pot)
      return refuse(pot.error());
    auto purchase = purchase_of(line, *line.since);
    if (!purchase)
      return refuse(purchase.error());
    auto group = new_lot(Kind::pot_group, *purchase, pot->id);
    if (!group)
      return refuse(group.error());
    auto entry = entry_for(book::Verb::buy_in, {*line.since, {}, note_of(line)});
    if (auto is = enter(entry, *group, line.place, book::State::bought_in, book::State::plant,
                        line.count);
        !is)
      return refuse(is.error());
    return told(line, *group, phrase("in '{}'", pot->name),
                counted(line.count.value(), "plant", "plants"));
  }

  Result<Brought> bring_seed(std::size_t i) {
    const auto& line = lines_[i];
    auto begun = begun_for(i);
    if (!begun)
      return refuse(begun.error());
    if (line.kind == Kind::batch)
      return bring_batch(line, *begun);
    auto pot = in("pot", known_.pot(pot_said(line)));
    if (!pot)
      return refuse(pot.error());
    if (pot->cells > 1 && line.count.value() > pot->cells)
      return wrong(
          "count",
          phrase("{} seeds in a '{}' of {} cells", line.count.value(), pot->name, pot->cells),
          phrase("Correct the count, or name another tray."));
    auto tray = new_lot(Kind::tray, begun->origin, pot->id);
    if (!tray)
      return refuse(tray.error());
    auto entry = entry_for(book::Verb::sow, {*line.since, {}, note_of(line)});
    entry.movements = {
        {{begun->batch.id, book::State::unsorted}, {tray->id, book::State::sown}, line.count}};
    if (auto is = enter(entry, *tray, line.place); !is)
      return refuse(is.error());
    if (auto is = look(line, *tray); !is)
      return refuse(is.error());
    return told(line, *tray,
                line.seedlings.none()
                    ? phrase("sown {}", line.since->said())
                    : phrase("sown {}, {} up", line.since->said(), line.seedlings.value()),
                counted(line.count.value(), "seed", "seeds"));
  }

  Result<Brought> bring_batch(const BroughtIn& line, const Begun& begun) {
    if (!line.place.empty()) {
      auto entry = entry_for(book::Verb::move, {line.since.value_or(*first_day(line)), {}, {}});
      if (auto is = enter(entry, begun.batch, line.place); !is)
        return refuse(is.error());
    }
    return told(line, begun.batch, phrase("not sown"),
                counted(line.count.value(), "seed", "seeds"));
  }

  Result<void> look(const BroughtIn& line, const book::Lot& tray) {
    if (line.seedlings.none() && !line.seen)
      return {};
    auto entry = entry_for(book::Verb::inspect, {line.seen.value_or(today_), {}, {}});
    if (!line.seedlings.none())
      entry.movements = {
          {{tray.id, book::State::sown}, {tray.id, book::State::root}, line.seedlings}};
    return in("seedlings", enter(entry, tray, {}));
  }

  /// The day a line's seed came off the cone or into the house.
  static std::optional<Date> first_day(const BroughtIn& line) {
    return line.harvested ? line.harvested : line.since;
  }

  Result<Begun> begun_for(std::size_t i) {
    const auto key = key_of(i);
    if (const auto there = begun_.find(key); there != begun_.end())
      return there->second;
    Beginning from{first_day(lines_[i]).value_or(today_), {}, earlier_list};
    if (!lines_[i].cone.empty())
      from.note += ": " + lines_[i].cone;
    bool sown_first = false;
    for (const auto other : together_.at(key)) {
      const auto& line = lines_[other];
      from.count += line.count;
      if (const auto day = first_day(line); day && *day <= from.day) {
        from.day = *day;
        sown_first = !line.harvested && line.kind == Kind::tray;
      }
      if (line.kind == Kind::batch)
        from.note = joined(from.note, note_of(line));
    }
    if (sown_first)
      from.note += "; the day is that of the first sowing, since no other was said";
    else if (!lines_[i].harvested)
      from.note += "; the day is that since which seed was there, since no other was said";
    auto begun = begin(lines_[i], from);
    if (begun)
      begun_.emplace(key, *begun);
    return begun;
  }

  Result<Begun> begin(const BroughtIn& line, const Beginning& from) {
    const bool cross = !line.seed_parent.empty();
    auto origin = cross ? cone_of(line) : purchase_of(line, from.day);
    if (!origin)
      return refuse(origin.error());
    auto batch = new_lot(Kind::batch, *origin, {});
    if (!batch)
      return refuse(batch.error());
    auto entry =
        entry_for(cross ? book::Verb::harvest : book::Verb::buy_in, {from.day, {}, from.note});
    if (auto is = enter(entry, *batch, {}, cross ? book::State::cone : book::State::bought_in,
                        book::State::unsorted, from.count);
        !is)
      return refuse(is.error());
    return Begun{*origin, *batch};
  }

  Result<book::Origin> cone_of(const BroughtIn& line) {
    auto female =
        in("seed parent", known_.plant({line.seed_parent, line.taxon, book::Sex::female}));
    if (!female)
      return refuse(female.error());
    auto code = writing_.next_code(Kind::cone);
    if (!code)
      return refuse(code.error());
    std::string note = earlier_list;
    if (const auto& taxon = known_.registers().taxon(female->taxon).name;
        !line.taxon.empty() && !book::read_alike(line.taxon, taxon))
      note = joined(note, "taxon: " + line.taxon);
    auto cone = writing_.put(book::Cone{{}, *code, female->id, line.pollinated, note});
    if (!cone)
      return refuse(cone.error());
    if (!line.pollinated)
      return *cone;
    book::PollenUsed used;
    if (!line.pollen_parent.empty()) {
      // Nobody said which taxon the father is of; the seed parent's is a guess, and marked so.
      auto male = in("pollen parent", known_.plant({line.pollen_parent, line.taxon, book::Sex::male,
                                                    book::Certainty::unsure}));
      if (!male)
        return refuse(male.error());
      auto pollen = known_.pollen(*male, *line.pollinated);
      if (!pollen)
        return refuse(pollen.error());
      used.lot = *pollen;
    }
    auto entry = entry_for(book::Verb::pollinate, {*line.pollinated, {}, earlier_list});
    entry.cone = *cone;
    entry.detail = book::Pollination{book::PollinationMethod::dry, {used}};
    auto id = writing_.enter(entry);
    if (!id)
      return refuse(id.error());
    all_.entries.push_back(*id);
    return *cone;
  }

  Result<book::Origin> purchase_of(const BroughtIn& line, Date day) {
    auto taxon = in("taxon", known_.taxon(line.taxon));
    if (!taxon)
      return refuse(taxon.error());
    auto code = writing_.next_code(Kind::purchase);
    if (!code)
      return refuse(code.error());
    auto id = writing_.put(book::Purchase{{},
                                          *code,
                                          *taxon,
                                          line.supplier.empty() ? earlier_list : line.supplier,
                                          day,
                                          parents_of(line, nobody_said)});
    if (!id)
      return refuse(id.error());
    return *id;
  }

  Result<book::Lot> new_lot(Kind kind, const book::Origin& origin, std::optional<book::PotId> pot) {
    auto code = writing_.next_code(kind);
    if (!code)
      return refuse(code.error());
    book::Lot lot;
    lot.code = *code;
    lot.origin = origin;
    lot.pot = pot;
    auto id = writing_.add(lot);
    if (!id)
      return refuse(id.error());
    lot.id = *id;
    return lot;
  }

  Result<void> enter(book::Entry entry, const book::Lot& lot, const std::string& place_said) {
    auto place = in("place", known_.place(place_said));
    if (!place)
      return refuse(place.error());
    entry.lot = lot.id;
    entry.place = *place;
    auto id = writing_.enter(entry);
    if (!id)
      return refuse(id.error());
    all_.entries.push_back(*id);
    return {};
  }

  Result<void> enter(book::Entry entry, const book::Lot& lot, const std::string& place,
                     book::State from, book::State to, Count count) {
    entry.movements = {{{lot.id, from}, {lot.id, to}, count}};
    return enter(std::move(entry), lot, place);
  }

  static Brought told(const BroughtIn& line, const book::Lot& lot, const std::string& how,
                      const std::string& many) {
    auto parents = parents_of(line, phrase("not known"));
    return {{lot.code},
            phrase("{} {}: {} of {}, {}{}", kind_said(lot.code.kind()), lot.code.text(), many,
                   parents.empty() ? line.taxon : parents, how,
                   line.place.empty() ? "" : ", " + line.place)};
  }

  store::Writing& writing_;
  std::span<const BroughtIn> lines_;
  Date today_;
  BroughtAll all_;
  KnownOrNew known_;
  std::map<Key, std::vector<std::size_t>> together_;
  std::map<Key, Begun> begun_;
};

} // namespace

BroughtAll bring_in(store::Writing& writing, std::span<const BroughtIn> lines, Date today,
                    const std::function<bool(std::size_t)>& go_on) {
  return Bringing(writing, lines, today).run(go_on);
}

} // namespace coneline::work
