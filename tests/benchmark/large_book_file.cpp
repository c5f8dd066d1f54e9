// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/benchmark/large_book_file.h"

#include <ranges>

namespace coneline::tests {

namespace {

class Maker {
 public:
  explicit Maker(store::Writing& writing) : writing_(writing) {
    taxon_ = writing_.put(book::Taxon{{}, "Cycas revoluta", {}, {}, {}, {}, {}, {}}).value();
    pot_ =
        writing_.put(book::Pot{{}, "tray", 5, book::Shape::rectangular, 400, 300, 50, "invented"})
            .value();
  }

  void add(const std::vector<stats::Tray>& trays, int looks) {
    const auto sown_on = Date::of(2024, 1, 1).value();
    std::string cross;
    book::LotId batch;
    for (const auto& tray : trays) {
      if (tray.group != cross)
        batch = harvest(cross = tray.group, sown_on);
      const auto lot = add_lot(Kind::tray);
      enter(book::Verb::sow, sown_on, lot, {batch, book::State::unsorted}, {lot, book::State::sown},
            tray.sown);
      for (const auto& look : tray.looks | std::views::take(looks))
        enter(book::Verb::inspect, sown_on.plus_days(static_cast<int>(look.day)), lot,
              {lot, book::State::sown}, {lot, book::State::root}, look.germinated);
    }
  }

 private:
  book::LotId harvest(const std::string& mother, Date sown_on) {
    book::Plant plant;
    plant.code = writing_.next_code(Kind::plant).value();
    plant.name = mother;
    plant.taxon = taxon_;
    plant.sex = book::Sex::female;
    const auto id = writing_.put(plant).value();
    cone_ =
        writing_.put(book::Cone{{}, writing_.next_code(Kind::cone).value(), id, {}, ""}).value();
    const auto batch = add_lot(Kind::batch);
    enter(book::Verb::harvest, sown_on.plus_days(-30), batch, {batch, book::State::cone},
          {batch, book::State::unsorted}, 100'000);
    return batch;
  }
  book::LotId add_lot(Kind kind) {
    book::Lot lot;
    lot.code = writing_.next_code(kind).value();
    lot.origin = cone_;
    if (kind == Kind::tray)
      lot.pot = pot_;
    return writing_.add(lot).value();
  }
  void enter(book::Verb verb, Date date, book::LotId lot, book::Account from, book::Account to,
             std::int64_t count) {
    book::Entry entry;
    entry.verb = verb;
    entry.date = date;
    entry.lot = lot;
    if (count > 0)
      entry.movements.push_back({from, to, Count::sure(count)});
    static_cast<void>(writing_.enter(entry).value());
  }

  store::Writing& writing_;
  book::TaxonId taxon_;
  book::PotId pot_;
  book::ConeId cone_;
};

} // namespace

store::Book make_empty_book(const std::filesystem::path& path) {
  return store::Book::make(path, {"Large book", 17, true, Date::of(2024, 1, 1).value()}).value();
}

void enter(store::Book& book, const std::vector<stats::Tray>& trays, int looks) {
  book.write([&](store::Writing& writing) -> Result<int> {
        Maker(writing).add(trays, looks);
        return 0;
      })
      .value();
}

store::Book make_large_book(const std::filesystem::path& path, int trays, int looks) {
  auto book = make_empty_book(path);
  enter(book, large_counts(trays), looks);
  return book;
}

} // namespace coneline::tests
