// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/papers.h"

#include "core/base/phrase.h"
#include "core/store/proof.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace coneline::report {

namespace {

bool is_end(book::State state) {
  return book::standing(state) == book::Standing::end;
}

class Collect {
 public:
  Collect(store::Reading& reading, const PapersAsked& asked)
      : reading_(reading), asked_(asked), registers_(reading.registers()) {
    papers_.title = registers_.title;
    papers_.printed = asked.printed;
    for (const auto& rule : asked.rules)
      if (rule.kind == TradeRule::Kind::rule)
        papers_.rules.push_back(rule);
  }

  Result<Papers> run() {
    const auto begun = asked_.sale ? of_sale(*asked_.sale) : of_code(asked_.code.value_or(Code()));
    if (!begun)
      return refuse(begun.error());
    list_taxa();
    what_is_missing();
    return std::move(papers_);
  }

 private:
  Result<void> of_code(const Code& code) {
    papers_.subject = fmt::format("{} {}", kind_said(code.kind()), code.text());
    switch (code.kind()) {
    case Kind::batch:
    case Kind::tray:
    case Kind::pot_group: {
      auto lot = reading_.lot(code);
      if (!lot)
        return refuse(lot.error());
      of_lot(*lot);
      return {};
    }
    case Kind::cone:
      if (const auto* cone = book::coded(registers_.cones, code)) {
        of_origin(cone->id);
        papers_.count = papers_.on_hand;
        return {};
      }
      break;
    case Kind::purchase:
      if (const auto* purchase = book::coded(registers_.purchases, code)) {
        of_origin(purchase->id);
        papers_.count = papers_.on_hand;
        return {};
      }
      break;
    case Kind::plant:
      if (const auto* plant = book::coded(registers_.plants, code)) {
        of_plant(*plant);
        return {};
      }
      break;
    case Kind::pollen:
    case Kind::place:
      return refuse(fault(phrase("a {} has no papers of its own", kind_said(code.kind())),
                          "Give a plant, cone, purchase, batch, tray or pot group, or a sale."));
    }
    return refuse(
        fault(phrase("there is no {} {} in this book", kind_said(code.kind()), code.text()),
              "Check the code, or the book."));
  }

  Result<void> of_sale(book::EntryId id) {
    const auto entry = reading_.entry(id);
    if (!entry)
      return refuse(entry.error());
    if (entry->verb != book::Verb::sell || !entry->lot)
      return refuse(
          fault(phrase("entry {} is no sale: it is '{}'", id.value, book::said(entry->verb)),
                "The history of a lot lists its entries."));
    if (const auto by = reading_.reversed_by(id))
      return refuse(
          fault(phrase("the sale of entry {} was reversed by entry {}", id.value, by->value),
                "Give a sale that stands."));
    of_lot(reading_.lot(*entry->lot));
    const auto lot = reading_.lot(*entry->lot).code.text();
    const auto& sale = std::get<book::Sale>(entry->detail);
    // Papers are files: their days are those of ISO 8601.
    papers_.subject = phrase("sale of {} (entry {}) out of {}{}", entry->date.iso(), id.value, lot,
                             sale.buyer.empty() ? "" : phrase(" to {}", sale.buyer));
    papers_.count = 0;
    papers_.sold = true;
    for (const auto& movement : entry->movements)
      papers_.count += movement.count.value();
    if (sale.buyer.empty())
      papers_.missing.push_back(phrase("who bought is not recorded"));
    return {};
  }

  void of_lot(const book::Lot& lot) {
    const auto line = work::line_back(reading_, registers_, lot);
    papers_.steps = line.steps;
    for (const auto& step : line.steps)
      line_.insert(step.lot);
    of_origin(lot.origin);
    papers_.count = line.steps.back().on_hand;
  }

  void of_plant(const book::Plant& plant) {
    papers_.what = book::plant_name(plant);
    papers_.taxon = registers_.taxon(plant.taxon).name;
    papers_.count = 1;
    add_plant(phrase("this plant"), plant.id);
    if (plant.seed_parent)
      add_plant(phrase("seed parent"), *plant.seed_parent);
    if (plant.pollen_parent)
      add_plant(phrase("pollen parent"), *plant.pollen_parent);
    if (!plant.seed_parent || !plant.pollen_parent)
      papers_.missing.push_back(
          phrase("who this plant comes from is not known, or not in the register"));
    for (const auto& cone : registers_.cones)
      if (cone.plant == plant.id)
        add_line_of(cone.id);
  }

  void of_origin(const book::Origin& origin) {
    const auto name = work::origin_names(reading_, registers_).at(origin);
    papers_.what = work::origin_said(name.name, work::Days::iso);
    papers_.taxon = name.taxon;
    if (const auto* cone = std::get_if<book::ConeId>(&origin)) {
      const auto passes = work::by_cone(reading_.standing_entries(book::Verb::pollinate))[*cone];
      const auto cross = book::cross_of(registers_, registers_.cone(*cone), passes);
      add_plant(phrase("seed parent"), cross.seed_parent);
      add_parents_of(cross.seed_parent);
      for (const auto& father : cross.pollen_parents) {
        add_plant(phrase("pollen parent"), father);
        add_parents_of(father);
      }
      if (passes.empty())
        papers_.missing.push_back(phrase("no pollination of {} is recorded, so the father is "
                                         "not known",
                                         registers_.cone(*cone).code.text()));
      else if (cross.unknown_father)
        papers_.missing.push_back(
            phrase("some of the pollen came from a father that is not known"));
    } else {
      papers_.purchase = book::row_of(registers_.purchases, std::get<book::PurchaseId>(origin));
    }
    add_line_of(origin);
  }

  /// A parent that was itself raised from plants of the register.
  void add_parents_of(book::PlantId id) {
    const auto& plant = registers_.plant(id);
    if (plant.seed_parent)
      add_plant(phrase("seed parent of {}", plant.code.text()), *plant.seed_parent);
    if (plant.pollen_parent)
      add_plant(phrase("pollen parent of {}", plant.code.text()), *plant.pollen_parent);
  }

  void add_plant(std::string role, book::PlantId id) {
    const auto& plant = registers_.plant(id);
    papers_.plants.push_back({std::move(role), plant, registers_.taxon(plant.taxon).name});
  }

  /// Pollinations, harvest, counts and disposals of one cone or purchase.
  void add_line_of(const book::Origin& origin) {
    const auto* cone = std::get_if<book::ConeId>(&origin);
    if (cone != nullptr)
      for (const auto& entry : reading_.standing_entries(book::Verb::pollinate))
        if (entry.cone == *cone)
          add_passes(entry);
    std::set<book::EntryId> seen;
    std::vector<book::Entry> entries;
    for (const auto& lot : reading_.lots())
      if (lot.origin == origin)
        for (auto& entry : reading_.entries_of(lot.id))
          if (seen.insert(entry.id).second)
            entries.push_back(std::move(entry));
    Harvest harvest{
        cone != nullptr
            ? registers_.cone(*cone).code
            : book::row_of(registers_.purchases, std::get<book::PurchaseId>(origin)).code,
        std::nullopt, 0};
    std::ranges::sort(entries, {},
                      [](const auto& entry) { return std::pair(entry.date, entry.id); });
    for (const auto& entry : entries)
      add_counts(entry, harvest);
    papers_.harvests.push_back(harvest);
  }

  void add_passes(const book::Entry& entry) {
    const auto& pass = std::get<book::Pollination>(entry.detail);
    for (const auto& used : pass.pollen) {
      std::string pollen = phrase("not known");
      if (used.lot) {
        const auto& lot = registers_.pollen_lot(*used.lot);
        const auto& father = registers_.plant(lot.plant);
        pollen = phrase("{} of {} ({}), collected {}", lot.code.text(), father.code.text(),
                        book::plant_name(father), lot.collected.iso());
      }
      papers_.passes.push_back({entry.id, entry.date, registers_.cone(*entry.cone).code,
                                std::string(book::word(pass.method)), std::move(pollen),
                                used.millilitres, entry.who});
    }
  }

  void add_counts(const book::Entry& entry, Harvest& harvest) {
    const bool stands = !entry.reverses && !reading_.reversed_by(entry.id);
    for (const auto& [from, to, count] : entry.movements) {
      const auto n = count.value();
      for (const auto& [account, by] : {std::pair(from, -n), std::pair(to, n)})
        switch (book::standing(account.state)) {
        case book::Standing::beginning:
          papers_.in -= by;
          harvest.seeds -= by;
          break;
        case book::Standing::on_hand:
          papers_.on_hand += by;
          break;
        case book::Standing::end:
          papers_.ended += by;
          break;
        }
      if (!stands)
        continue;
      if (book::standing(from.state) == book::Standing::beginning)
        harvest.date = harvest.date ? std::min(*harvest.date, entry.date) : entry.date;
      if (is_end(to.state) || is_end(from.state))
        add_disposal(entry, is_end(to.state) ? to : from, is_end(to.state) ? n : -n);
    }
  }

  void add_disposal(const book::Entry& entry, const book::Account& end, std::int64_t count) {
    const auto* sale = std::get_if<book::Sale>(&entry.detail);
    papers_.disposals.push_back({entry.id, entry.date, reading_.lot(end.lot).code, count, end.state,
                                 sale != nullptr ? sale->buyer : "", line_.contains(end.lot)});
  }

  void list_taxa() {
    std::set<std::string> taxa;
    for (const auto& plant : papers_.plants)
      taxa.insert(plant.taxon);
    if (papers_.purchase)
      taxa.insert(registers_.taxon(papers_.purchase->taxon).name);
    for (const auto& taxon : taxa) {
      const auto* rule = listing_of(asked_.rules, taxon);
      if (rule == nullptr) {
        papers_.missing.push_back(
            phrase("the table of rules has no listing for {}: look it up", taxon));
        continue;
      }
      papers_.listings.push_back(*rule);
      papers_.listings.back().name = taxon;
    }
  }

  void what_is_missing() {
    auto& missing = papers_.missing;
    for (const auto& [role, plant, taxon] : papers_.plants) {
      const auto say = [&](const std::string& what) {
        missing.push_back(
            fmt::format("{} {} ({}): {}", role, plant.code.text(), book::plant_name(plant), what));
      };
      if (plant.papers.empty())
        say(phrase("no papers are recorded"));
      if (plant.origin.empty())
        say(phrase("the origin is not recorded"));
      if (!plant.acquired)
        say(phrase("the day it came is not recorded"));
      if (plant.taxon_certainty != book::Certainty::certain)
        say(phrase("the name {} is {}", taxon, book::said(plant.taxon_certainty)));
      for (const auto& paper : plant.papers)
        if (paper.number.empty() || !paper.issued || paper.authority.empty())
          say(phrase("number, day or authority of the {} is not recorded",
                     paper.kind.empty() ? phrase("paper") : paper.kind));
    }
    if (papers_.purchase) {
      if (papers_.purchase->supplier.empty())
        missing.push_back(phrase("the supplier is not recorded"));
      if (papers_.purchase->note.empty())
        missing.push_back(phrase("what the supplier said of parents and papers is not recorded"));
    }
    std::int64_t unexplained = 0;
    for (const auto& disposal : papers_.disposals)
      unexplained += disposal.as == book::State::unexplained ? disposal.count : 0;
    if (unexplained != 0)
      missing.push_back(
          unexplained > 0
              ? phrase("recounts found missing {} that nothing explains", unexplained)
              : phrase("recounts found more by {} that nothing explains", -unexplained));
  }

  store::Reading& reading_;
  const PapersAsked& asked_;
  book::Registers registers_;
  Papers papers_;
  std::set<book::LotId> line_;
};

} // namespace

Result<Papers> papers(store::Reading& reading, const PapersAsked& asked) {
  auto made = Collect(reading, asked).run();
  if (!made)
    return made;
  const auto proof = store::prove(reading);
  made->last_link = proof.last_link;
  made->entries = proof.entries;
  made->chain_holds = proof.holds();
  if (!proof.holds())
    made->missing.insert(
        made->missing.begin(),
        phrase("the book does not prove; its first fault: {}", proof.faults.front()));
  return made;
}

std::vector<StandingSale> sales_of(store::Reading& reading, const Code& lot) {
  const auto found = reading.lot(lot);
  if (!found)
    return {};
  std::vector<StandingSale> sales;
  for (const auto& entry : reading.standing_entries(book::Verb::sell)) {
    if (entry.lot != found->id)
      continue;
    std::int64_t count = 0;
    for (const auto& movement : entry.movements)
      count += movement.count.value();
    sales.push_back({entry.id, entry.date, count, std::get<book::Sale>(entry.detail).buyer});
  }
  return sales;
}

} // namespace coneline::report
