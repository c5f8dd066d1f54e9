// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The small book with what a choice of crosses looks at: cones that stand, take pollen, close and
// are harvested, and trays that are over.

#include "core/report/crossing_input.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::tests {

using book::State;

class CrossingGround : public testing::Test {
 protected:
  CrossingGround() : book(make_first_cone(scratch.at("t.coneline"), first)) {}

  Result<plan::CrossingInput> given(report::CrossingAsked asked) {
    if (asked.today == Date{})
      asked.today = day("2026-03-10");
    return book.read(
        [&](store::Reading& reading) { return report::crossing_input(reading, asked); });
  }
  report::CrossingAsked of_mother() {
    report::CrossingAsked asked;
    asked.females = {first.mother};
    return asked;
  }
  book::Registers registers() {
    return book.read([](store::Reading& reading) { return reading.registers(); }).value();
  }
  book::PlantId plant_id(const Code& code) { return book::coded(registers().plants, code)->id; }
  template <class Row>
  void put(const Row& row) {
    ASSERT_TRUE(book.write([&](store::Writing& writing) -> Result<void> {
      return writing.put(row).map([](auto) {});
    }));
  }
  void enter(const book::Entry& entry) {
    ASSERT_TRUE(book.write([&](store::Writing& writing) { return writing.enter(entry); }));
  }
  book::Cone cone_of(const Code& plant, std::string_view seen = "2025-01-10") {
    return book
        .write([&](store::Writing& writing) -> Result<book::Cone> {
          book::Cone cone{{},
                          writing.next_code(Kind::cone).value(),
                          book::coded(writing.registers().plants, plant)->id,
                          day(seen),
                          ""};
          return writing.put(cone).map([&](auto id) {
            cone.id = id;
            return cone;
          });
        })
        .value();
  }
  void pass(const book::Cone& cone, std::string_view on, std::optional<double> millilitres) {
    book::Entry entry;
    entry.verb = book::Verb::pollinate;
    entry.date = day(on);
    entry.cone = cone.id;
    entry.detail = book::Pollination{{}, {{registers().pollen_lots.front().id, millilitres}}};
    enter(entry);
  }
  void look(const book::Cone& cone, std::string_view on, book::Scales scales,
            std::optional<std::int64_t> fertile = {}) {
    book::Entry entry;
    entry.verb = book::Verb::check_scales;
    entry.date = day(on);
    entry.cone = cone.id;
    entry.detail = book::ConeLook{scales, fertile};
    enter(entry);
  }
  /// Its batch.
  book::LotId harvest(const book::Cone& cone, std::string_view on, std::int64_t seeds) {
    book::Lot batch;
    batch.origin = cone.id;
    batch.id = book.write([&](store::Writing& writing) {
                     batch.code = writing.next_code(Kind::batch).value();
                     return writing.add(batch);
                   })
                   .value();
    book::Entry entry;
    entry.verb = book::Verb::harvest;
    entry.date = day(on);
    entry.lot = batch.id;
    entry.movements = {{{batch.id, State::cone}, {batch.id, State::unsorted}, Count::sure(seeds)}};
    enter(entry);
    return batch.id;
  }
  /// A tray of the first batch, long over: so many of 40 came up.
  void tray_over(std::int64_t up) {
    book::Lot tray;
    tray.origin = registers().cones.front().id;
    tray.pot = registers().pots.front().id;
    tray.id = book.write([&](store::Writing& writing) {
                    tray.code = writing.next_code(Kind::tray).value();
                    return writing.add(tray);
                  })
                  .value();
    book::Entry entry;
    entry.verb = book::Verb::sow;
    entry.date = day("2026-02-10");
    entry.lot = tray.id;
    entry.movements = {
        {{first.batch_id, State::unsorted}, {tray.id, State::sown}, Count::sure(40)}};
    enter(entry);
    entry.verb = book::Verb::inspect;
    entry.date = day("2026-04-01");
    entry.movements.clear();
    if (up > 0)
      entry.movements = {{{tray.id, State::sown}, {tray.id, State::root}, Count::sure(up)}};
    enter(entry);
  }
  static const plan::FemaleToCross* female(const plan::CrossingInput& input, const Code& code) {
    const auto found = std::ranges::find(input.females, code, &plan::FemaleToCross::code);
    return found == input.females.end() ? nullptr : &*found;
  }
  static std::string why(const plan::CrossingInput& input, const Code& code) {
    for (const auto& [left_out, told] : input.left_out)
      if (left_out == code)
        return told;
    return {};
  }

  Scratch scratch;
  FirstCone first;
  store::Book book;
};

} // namespace coneline::tests
