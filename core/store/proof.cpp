// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/proof.h"

#include "core/base/phrase.h"
#include "core/store/chain.h"
#include "core/store/engine/sqlite.h"
#include "core/store/migrations.h"
#include "core/store/tables.h"

#include <fmt/format.h>

#include <map>
#include <set>

namespace coneline::store {

namespace {

/// A movement as it stands in the file, with the day of its entry.
struct Line {
  std::int64_t entry = 0;
  Date date;
  book::Movement movement;
};

class Prover {
 public:
  Prover(Tables& tables, Reading& reading, std::string printed, const Progress& progress)
      : tables_(tables), reading_(reading), printed_(std::move(printed)), parts_(progress) {}

  Proof prove() {
    constexpr double sound = 0.3;
    constexpr double linked = 0.8;
    for (const auto& fault : engine::integrity_faults(tables_.session(), parts_.part(0, sound)))
      say("the file: " + fault);
    schema_is_whole();
    try {
      every_lot_has_one_origin();
      chain_holds(parts_.part(sound, linked));
      if (parts_.stopped())
        return std::move(proof_);
      read();
      every_movement_balances();
      no_account_below_zero();
      every_seed_is_accounted_for();
      every_lot_leads_back();
      reversals_mirror();
    } catch (const std::exception& unreadable) {
      say(phrase("the ledger cannot be read to its end: {}", unreadable.what()));
    }
    if (const auto all = parts_.part(linked, 1))
      all(1, 1);
    return std::move(proof_);
  }

 private:
  void say(std::string fault) { proof_.faults.push_back(std::move(fault)); }

  std::string name(book::LotId id) const {
    const auto found = lots_.find(id.value);
    return found == lots_.end() ? phrase("lot {}", id.value) : found->second.code.text();
  }

  /// Guards taken out of a file would let a later program write what is not true.
  void schema_is_whole() {
    soci::session fresh;
    engine::open_in_memory(fresh);
    for (const auto& step : migrations())
      engine::run_script(fresh, step.script);
    const auto there = engine::schema(tables_.session());
    const std::set<std::string> found(there.begin(), there.end());
    for (const auto& wanted : engine::schema(fresh))
      if (!found.contains(wanted))
        say(phrase("the file's own guard or table '{}' is missing or was changed",
                   wanted.substr(0, wanted.find(':'))));
  }

  /// Asked of the file before anything is read from it: a lot without an origin cannot be read.
  void every_lot_has_one_origin() {
    tables_
        .ask("SELECT id, cone_id IS NULL AS none FROM lot "
             "WHERE (cone_id IS NULL) = (purchase_id IS NULL) ORDER BY id")
        .each([&](const Row& row) {
          const auto lot = phrase("lot {}", row.whole("id"));
          say(row.whole("none") != 0 ? phrase("{} leads back to no cone and no purchase", lot)
                                     : phrase("{} leads back to a cone and to a purchase", lot));
        });
  }

  void chain_holds(const Progress& progress) {
    auto chain = prove_chain(tables_, reading_, progress);
    proof_.links = chain.links;
    proof_.last_link = std::move(chain.last);
    for (auto& fault : chain.faults)
      say(std::move(fault));
    if (!printed_.empty() &&
        !tables_.ask("SELECT entry_id FROM entry_link WHERE hash = :hash").with(printed_).number())
      say(phrase("the link {} is not in this book's chain: entries before it were changed and "
                 "the chain made anew, or it belongs to another book",
                 printed_));
  }

  void read() {
    for (auto& lot : reading_.lots())
      lots_.emplace(lot.id.value, lot);
    tables_.ask("SELECT count(*) AS n FROM entry").each([&](const Row& row) {
      proof_.entries = row.whole("n");
    });
    tables_
        .ask("SELECT m.entry_id, e.date, m.from_lot, m.from_state, m.to_lot, m.to_state, m.count "
             "FROM movement AS m JOIN entry AS e ON e.id = m.entry_id ORDER BY e.date, m.entry_id, "
             "m.id")
        .each([&](const Row& row) {
          const auto count = row.whole("count");
          if (count <= 0) {
            say(phrase("entry {}: a movement of {}", row.whole("entry_id"), count));
            return;
          }
          lines_.push_back(
              {row.whole("entry_id"),
               row.date("date"),
               {{book::LotId{row.whole("from_lot")}, row.one_of<book::State>("from_state")},
                {book::LotId{row.whole("to_lot")}, row.one_of<book::State>("to_state")},
                Count::sure(count)}});
        });
    proof_.lots = static_cast<std::int64_t>(lots_.size());
    proof_.movements = static_cast<std::int64_t>(lines_.size());
  }

  void every_movement_balances() {
    for (const auto& [entry, date, movement] : lines_) {
      const auto from = lots_.find(movement.from.lot.value);
      const auto to = lots_.find(movement.to.lot.value);
      if (from == lots_.end() || to == lots_.end()) {
        say(phrase("entry {}: a movement of a lot that is missing", entry));
        continue;
      }
      if (from->second.origin != to->second.origin)
        say(phrase("entry {}: {} and {} come from different cones", entry, name(movement.from.lot),
                   name(movement.to.lot)));
      for (const auto& account : {movement.from, movement.to})
        if (!book::holds(lots_.at(account.lot.value).code.kind(), account.state))
          say(phrase("entry {}: {} cannot hold what is '{}'", entry, name(account.lot),
                     book::said(account.state)));
    }
  }

  /// One sweep in the order of days: every account's balance at the end of each day on which it
  /// changed.
  void no_account_below_zero() {
    std::map<book::Account, std::int64_t> balances;
    std::set<book::Account> below;
    for (std::size_t i = 0; i < lines_.size();) {
      const auto day = lines_[i].date;
      std::set<book::Account> touched;
      for (; i < lines_.size() && lines_[i].date == day; ++i) {
        const auto& [from, to, count] = lines_[i].movement;
        balances[from] -= count.value();
        balances[to] += count.value();
        touched.insert(from);
      }
      for (const auto& account : touched) {
        const bool may = book::standing(account.state) == book::Standing::beginning ||
                         account.state == book::State::unexplained;
        if (!may && balances[account] < 0 && below.insert(account).second)
          say(phrase("{} has {} '{}' on {}", name(account.lot), balances[account],
                     book::said(account.state), day.said()));
      }
    }
    proof_.accounts = static_cast<std::int64_t>(balances.size());
    balances_ = std::move(balances);
  }

  /// Adds up what the proof tells. That it comes out follows from movements having both sides at
  /// one origin; where one has not, this says by how much seed, and of which cone.
  void every_seed_is_accounted_for() {
    struct Sum {
      std::int64_t in = 0;
      std::int64_t on_hand = 0;
      std::int64_t ended = 0;
    };
    std::map<book::Origin, Sum> sums;
    for (const auto& [account, balance] : balances_) {
      const auto lot = lots_.find(account.lot.value);
      if (lot == lots_.end())
        continue;
      auto& sum = sums[lot->second.origin];
      switch (book::standing(account.state)) {
      case book::Standing::beginning:
        sum.in -= balance;
        break;
      case book::Standing::on_hand:
        sum.on_hand += balance;
        break;
      case book::Standing::end:
        sum.ended += balance;
        proof_.unexplained += account.state == book::State::unexplained ? balance : 0;
        break;
      }
    }
    for (const auto& [origin, sum] : sums) {
      if (sum.in != sum.on_hand + sum.ended)
        say(phrase("{}: {} seeds in, but {} on hand and {} ended", origin_name(origin), sum.in,
                   sum.on_hand, sum.ended));
      proof_.seeds_in += sum.in;
      proof_.on_hand += sum.on_hand;
      proof_.ended += sum.ended;
    }
    proof_.origins = static_cast<std::int64_t>(sums.size());
  }

  std::string origin_name(const book::Origin& origin) {
    const auto* cone = std::get_if<book::ConeId>(&origin);
    const auto id = cone != nullptr ? cone->value : std::get<book::PurchaseId>(origin).value;
    const auto number = tables_
                            .ask(cone != nullptr ? "SELECT number FROM cone WHERE id = :id"
                                                 : "SELECT number FROM purchase WHERE id = :id")
                            .with(id)
                            .number();
    return number ? tables_.code(cone != nullptr ? Kind::cone : Kind::purchase, *number).text()
                  : phrase("a {} that is missing", cone != nullptr ? "cone" : "purchase");
  }

  /// Every lot that holds or held something was filled from the beginning or from another lot of
  /// the same origin, and following these back ends at a beginning.
  void every_lot_leads_back() {
    std::map<std::int64_t, std::set<std::int64_t>> filled_from;
    std::set<std::int64_t> reached;
    for (const auto& [entry, date, movement] : lines_) {
      if (book::standing(movement.from.state) == book::Standing::beginning)
        reached.insert(movement.to.lot.value);
      filled_from[movement.to.lot.value].insert(movement.from.lot.value);
    }
    for (bool grown = true; grown;) {
      grown = false;
      for (const auto& [lot, sources] : filled_from)
        if (!reached.contains(lot) &&
            std::ranges::any_of(sources, [&](auto source) { return reached.contains(source); })) {
          reached.insert(lot);
          grown = true;
        }
    }
    for (const auto& [lot, sources] : filled_from)
      if (!reached.contains(lot))
        say(phrase("{} leads back to no cone and no purchase", name({lot})));
  }

  void reversals_mirror() {
    std::map<std::int64_t, std::vector<book::Movement>> by_entry;
    std::map<std::int64_t, Date> dates;
    for (const auto& [entry, date, movement] : lines_) {
      by_entry[entry].push_back(movement);
      dates[entry] = date;
    }
    tables_.ask("SELECT id, reverses FROM entry WHERE reverses IS NOT NULL")
        .each([&](const Row& row) {
          ++proof_.reversals;
          auto mirrored = by_entry[row.whole("reverses")];
          for (auto& movement : mirrored)
            std::swap(movement.from, movement.to);
          if (mirrored != by_entry[row.whole("id")] ||
              dates[row.whole("reverses")] != dates[row.whole("id")])
            say(phrase("entry {} does not mirror entry {}, which it reverses", row.whole("id"),
                       row.whole("reverses")));
        });
  }

  Tables& tables_;
  Reading& reading_;
  std::string printed_;
  ProgressOfParts parts_;
  Proof proof_;
  std::map<std::int64_t, book::Lot> lots_;
  std::vector<Line> lines_;
  std::map<book::Account, std::int64_t> balances_;
};

} // namespace

Proof prove(Reading& reading, const std::string& printed, const Progress& progress) {
  return Prover(reading.tables(), reading, printed, progress).prove();
}

Result<Proof> prove(Book& book, const std::string& printed, const Progress& progress) {
  return book.read([&](Reading& reading) { return prove(reading, printed, progress); });
}

} // namespace coneline::store
