// SPDX-License-Identifier: GPL-3.0-or-later
// What the book's own seed says about the float test, and about stores.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/work/float_history.h"
#include "core/work/stores.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct FloatTestOptions {
  BookOption book;
  std::string taxon;
  std::string on;
  bool accept = false;
};

const char* word_of(stats::FloatVerdict verdict) {
  switch (verdict) {
  case stats::FloatVerdict::trusted:
    return "trusted";
  case stats::FloatVerdict::not_trusted:
    return "not trusted";
  case stats::FloatVerdict::not_known:
    break;
  }
  return "not known";
}

Json json_of(const stats::PartRecord& part) {
  return {{"opened", part.opened},
          {"filled_opened", part.opened_filled},
          {"tried", part.tried},
          {"came_up", part.came_up}};
}

Json json_of(const stats::LearnedShare& share) {
  return {{"middle", share.middle}, {"low", share.range.low}, {"high", share.range.high}};
}

Json json_of(const work::FloatHistory& history) {
  return {{"taxon", history.name},
          {"setting", book::word(history.now.value)},
          {"source", history.now.source},
          {"batches", history.seasons.size()},
          {"sank", json_of(history.sank)},
          {"floated", json_of(history.floated)},
          {"floated_waiting", history.floated_waiting},
          {"sank_filled", json_of(history.learned.sank_filled)},
          {"floated_filled", json_of(history.learned.floated_filled)},
          {"verdict", word_of(history.verdict)},
          {"suggested", history.suggested ? Json(book::word(*history.suggested)) : Json(nullptr)},
          {"told", history.told}};
}

std::string range_of(const stats::LearnedShare& share) {
  return fmt::format("{:.0f}–{:.0f} %", 100 * share.range.low, 100 * share.range.high);
}

Answer answer_of(const std::vector<work::FloatHistory>& histories) {
  Answer answer;
  answer.json = Json::array();
  Table table({"taxon", "float test now", "floaters opened:filled", "sown:up", "floaters filled",
               "sinkers filled", "suggested"});
  std::string told;
  for (const auto& history : histories) {
    answer.json.push_back(json_of(history));
    table.row({history.name, std::string(book::word(history.now.value)),
               fmt::format("{}:{}", history.floated.opened, history.floated.opened_filled),
               fmt::format("{}:{}", history.floated.tried, history.floated.came_up),
               range_of(history.learned.floated_filled), range_of(history.learned.sank_filled),
               history.suggested ? std::string(book::word(*history.suggested)) : "–"});
    told += fmt::format("\n{}: {}", history.name, history.told);
    if (history.suggested)
      told += fmt::format(" To make it so: coneline float-test '{}' --accept", history.name);
  }
  answer.table =
      histories.empty() ? "No batch of this book was floated yet.\n" : table.text() + told + '\n';
  return answer;
}

Result<Answer> run(const FloatTestOptions& options) {
  auto day = date_or_today(options.on, "--on");
  if (!day)
    return refuse(day.error());
  if (options.accept && options.taxon.empty())
    return refuse(usage_fault("--accept without a taxon", "Name the taxon whose test it is."));
  auto book = options.book.open(options.accept ? store::Access::write : store::Access::read);
  if (!book)
    return refuse(book.error());
  if (options.accept)
    return work::accept_float_test(*book, options.taxon, *day).map([](const work::Done& done) {
      return answer(done);
    });
  return book->read([&](store::Reading& reading) -> Result<Answer> {
    const auto registers = reading.registers();
    if (options.taxon.empty())
      return answer_of(work::float_histories(reading, registers, *day));
    return work::float_history(reading, registers, options.taxon, *day)
        .map([](const work::FloatHistory& history) { return answer_of({history}); });
  });
}

struct StoresOptions {
  BookOption book;
  std::string on;
  double confidence = 0.95;
};

Result<Answer> run(const StoresOptions& options) {
  auto day = date_or_today(options.on, "--on");
  if (!day)
    return refuse(day.error());
  if (!(options.confidence > 0 && options.confidence < 1))
    return refuse(
        usage_fault(fmt::format("--confidence {} is not between 0 and 1", options.confidence),
                    "Write a share such as 0.95."));
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  return book->read([&](store::Reading& reading) -> Result<Answer> {
    const auto registers = reading.registers();
    const auto batches = work::kept_batches(reading, registers, *day);
    Answer answer;
    answer.json = Json::array();
    Table table({"taxon", "store", "batches", "trays", "tried", "came up",
                 fmt::format("% up, {:g} % range", 100 * options.confidence), "% up", "waiting",
                 "months from harvest"});
    for (const auto& of : work::compare_stores(batches, registers, options.confidence)) {
      answer.json.push_back({{"taxon", of.taxon},
                             {"store", of.store},
                             {"batches", of.batches},
                             {"trays", of.trays},
                             {"tried", of.tried},
                             {"came_up", of.came_up},
                             {"share", of.share.share.value()},
                             {"low", of.share.range->low},
                             {"high", of.share.range->high},
                             {"waiting", of.waiting},
                             {"months_low", of.months_low},
                             {"months_high", of.months_high}});
      table.row(
          {of.taxon, of.store, std::to_string(of.batches), std::to_string(of.trays),
           std::to_string(of.tried), std::to_string(of.came_up),
           fmt::format("{:.1f}–{:.1f}", 100 * of.share.range->low, 100 * of.share.range->high),
           fmt::format("{:.1f}", 100 * *of.share.share), std::to_string(of.waiting),
           fmt::format("{:.1f}–{:.1f}", of.months_low, of.months_high)});
    }
    answer.table = answer.json.empty()
                       ? "No seed of this book was stored and then sown yet.\n"
                       : table.text() + "\nTried: sown, less what still waits in trays. Batches "
                                        "differ in more than their store.\n";
    return answer;
  });
}

} // namespace

void add_learning(CommandLine& line) {
  const auto floats = std::make_shared<FloatTestOptions>();
  auto& float_test = line.add("float-test", "What the book's own seed says about the float test",
                              [floats] { return run(*floats); });
  floats->book.add_to(float_test);
  float_test.add_option("taxon", floats->taxon, "One taxon; all of them when left out");
  float_test.add_option("--on", floats->on, "As of this day; today when left out");
  float_test.add_flag("--accept", floats->accept, "Make the suggestion the taxon's setting");

  const auto stores = std::make_shared<StoresOptions>();
  auto& compared = line.add("stores", "Stores side by side, by what came up from them later",
                            [stores] { return run(*stores); });
  stores->book.add_to(compared);
  compared.add_option("--on", stores->on, "As of this day; today when left out");
  real_option(compared, "--confidence", stores->confidence,
              "How sure the ranges are; 0.95 unless said");
}

} // namespace coneline::commands
