// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// An invented nursery for tests, written entry by entry: one taxon, one male, trays and pots.

#include "core/store/book.h"
#include "tests/core/day.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

namespace coneline::tests {

class SmallNursery {
 public:
  template <class Ask>
  auto ask(Ask asked) {
    return book_.read(asked).value();
  }
  /// Runs `act(Writing&)`; what fails inside throws.
  template <class Act>
  std::invoke_result_t<Act, store::Writing&> write(Act act) {
    using Given = std::invoke_result_t<Act, store::Writing&>;
    return book_.write([&](store::Writing& writing) -> Result<Given> { return act(writing); })
        .value();
  }

  explicit SmallNursery(bool invented = true)
      : book_(store::Book::make(scratch_.at("book.coneline"),
                                {"Test nursery", 17, invented, day("2024-01-01")})
                  .value()) {
    write([&](store::Writing& writing) {
      taxon_ = writing.put(book::Taxon{{}, "Cycas revoluta", {}, {}, {}, {}, {}, {}}).value();
      tray_pot_ =
          writing
              .put(book::Pot{{}, "tray of 50", 5, book::Shape::rectangular, 400, 300, 50, "test"})
              .value();
      pot_ = writing.put(book::Pot{{}, "1 L", 1, book::Shape::round, 110, 110, 1, "test"}).value();
      mix_ =
          writing.put(book::Mix{{}, "cycad mix", 0.2, 0.1, "test", {{"perlite", 4}, {"peat", 4}}})
              .value();
      return true;
    });
    father_ = plant("Blue Twin", book::Sex::male);
    pollen_ = write([&](store::Writing& writing) {
      book::PollenLot lot;
      lot.code = writing.next_code(Kind::pollen).value();
      lot.plant = father_;
      lot.collected = day("2024-05-01");
      return writing.put(lot).value();
    });
  }

  /// Half the seed up in six months, then a tray and a 1 L pot, each 3 to 6 months and 9 of 10
  /// kept.
  void put_route() {
    write([&](store::Writing& writing) {
      book::Route route;
      route.taxon = taxon_;
      route.germination = 0.5;
      route.germination_months = {1, 6};
      route.steps = {{tray_pot_, mix_, {3, 6}, 0.9, book::Light::part_shade, "test"},
                     {pot_, mix_, {3, 6}, 0.9, book::Light::part_shade, "test"}};
      return writing.put(route).value();
    });
  }

  book::PlantId plant(const std::string& name, book::Sex sex) {
    return write([&](store::Writing& writing) {
      book::Plant plant;
      plant.code = writing.next_code(Kind::plant).value();
      plant.name = name;
      plant.taxon = taxon_;
      plant.sex = sex;
      return writing.put(plant).value();
    });
  }

  /// A cone of this mother, pollinated by the one male.
  book::ConeId cone(book::PlantId mother, std::string_view pollinated = "2024-06-01") {
    const auto cone = write([&](store::Writing& writing) {
      return writing.put(book::Cone{{}, writing.next_code(Kind::cone).value(), mother, {}, ""})
          .value();
    });
    book::Entry entry;
    entry.verb = book::Verb::pollinate;
    entry.date = day(pollinated);
    entry.cone = cone;
    entry.detail = book::Pollination{book::PollinationMethod::dry, {{pollen_, {}}}};
    enter(entry);
    return cone;
  }

  book::LotId lot(Kind kind, const book::Origin& origin) {
    return write([&](store::Writing& writing) {
      book::Lot lot;
      lot.code = writing.next_code(kind).value();
      lot.origin = origin;
      if (kind != Kind::batch)
        lot.pot = kind == Kind::tray ? tray_pot_ : pot_;
      return writing.add(lot).value();
    });
  }

  struct Moved {
    book::LotId from;
    book::State from_state;
    book::LotId to;
    book::State to_state;
    std::int64_t count;
  };
  /// Counts of zero move nothing.
  book::EntryId enter(book::Verb verb, std::string_view on, book::LotId lot,
                      const std::vector<Moved>& moved) {
    book::Entry entry;
    entry.verb = verb;
    entry.date = day(on);
    entry.lot = lot;
    for (const auto& m : moved)
      if (m.count != 0)
        entry.movements.push_back(
            {{m.from, m.from_state}, {m.to, m.to_state}, Count::sure(m.count)});
    return enter(entry);
  }
  book::EntryId enter(const book::Entry& entry) {
    return write([&](store::Writing& writing) { return writing.enter(entry).value(); });
  }

  book::LotId harvest(const book::Origin& origin, std::string_view on, std::int64_t seeds) {
    const auto batch = lot(Kind::batch, origin);
    const auto from =
        std::holds_alternative<book::ConeId>(origin) ? book::State::cone : book::State::bought_in;
    enter(from == book::State::cone ? book::Verb::harvest : book::Verb::buy_in, on, batch,
          {{batch, from, batch, book::State::unsorted, seeds}});
    return batch;
  }
  book::LotId sow(book::LotId batch, std::string_view on, std::int64_t seeds) {
    const auto tray = lot(Kind::tray, lot_of(batch).origin);
    enter(book::Verb::sow, on, tray,
          {{batch, book::State::unsorted, tray, book::State::sown, seeds}});
    return tray;
  }
  book::EntryId inspect(book::LotId tray, std::string_view on, std::int64_t roots,
                        std::int64_t leaves = 0, std::int64_t dead = 0) {
    return enter(book::Verb::inspect, on, tray,
                 {{tray, book::State::sown, tray, book::State::root, roots},
                  {tray, book::State::root, tray, book::State::leaf, leaves},
                  {tray, book::State::sown, tray, book::State::dead, dead}});
  }
  void reverse(book::EntryId wrong) {
    auto entry = book_.read([&](store::Reading& reading) { return reading.entry(wrong); }).value();
    for (auto& movement : entry.movements)
      std::swap(movement.from, movement.to);
    entry.verb = book::Verb::reverse;
    entry.reverses = wrong;
    entry.detail = {};
    entry.place = {};
    enter(entry);
  }

  book::Lot lot_of(book::LotId id) {
    return ask([&](store::Reading& reading) { return reading.lot(id); });
  }
  store::Book& book() { return book_; }
  [[nodiscard]] std::filesystem::path at(const std::string& name) const {
    return scratch_.at(name);
  }
  [[nodiscard]] book::TaxonId taxon() const { return taxon_; }
  [[nodiscard]] book::PotId tray_pot() const { return tray_pot_; }
  [[nodiscard]] book::PotId pot() const { return pot_; }
  [[nodiscard]] book::MixId mix() const { return mix_; }

 private:
  Scratch scratch_;
  store::Book book_;
  book::TaxonId taxon_;
  book::PotId tray_pot_;
  book::PotId pot_;
  book::MixId mix_;
  book::PlantId father_;
  book::PollenLotId pollen_;
};

} // namespace coneline::tests
