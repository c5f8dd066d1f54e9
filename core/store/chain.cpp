// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/chain.h"

#include "core/base/phrase.h"
#include "core/store/reading.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace coneline::store {

namespace {

constexpr std::int64_t entries_at_once = 5000; // a whole book would fill the memory

std::int64_t last_entry(Tables& tables) {
  return tables.ask("SELECT coalesce(max(id), 0) FROM entry").number().value_or(0);
}

/// What can still be said of an entry that cannot be read.
std::string name_of(Tables& tables, std::int64_t id) {
  std::string name = phrase("entry {}", id);
  tables.ask("SELECT date, verb FROM entry WHERE id = :id").with(id).each([&](const Row& row) {
    name += phrase(" of {} ({})", row.text("date"), row.text("verb"));
  });
  return name;
}

std::string name_of(const book::Entry& entry, StoredNames& names) {
  std::string what =
      phrase("entry {} of {} ({}", entry.id.value, entry.date.said(), book::said(entry.verb));
  for (const auto& [from, to, count] : entry.movements)
    what += phrase("; now {} '{}' of [{}] to '{}' of [{}]", count.value(), book::said(from.state),
                   names.lot(from.lot), book::said(to.state), names.lot(to.lot));
  return what + ")";
}

/// Walks over the entries once, in their order, beside their stored links.
class ProveChain {
 public:
  ProveChain(Tables& tables, Reading& reading)
      : tables_(tables), reading_(reading), names_(tables) {}

  ChainProof run(const Progress& progress) {
    for (auto& link : reading_.links())
      stored_.emplace(link.entry.value, std::move(link.hash));
    proof_.links = static_cast<std::int64_t>(stored_.size());
    const auto last = last_entry(tables_);
    for (std::int64_t first = 1; first <= last; first += entries_at_once) {
      if (progress && !progress(static_cast<std::size_t>(first), static_cast<std::size_t>(last))) {
        proof_.faults.push_back(phrase("the proof of the chain was stopped"));
        return std::move(proof_);
      }
      block(first, std::min(last, first + entries_at_once - 1));
    }
    for (const auto& [id, hash] : stored_)
      broken(phrase("entry {} is missing, and its link is still there", id));
    if (broken_ > 1)
      proof_.faults.push_back(
          phrase("the chain: {} further links do not hold either", broken_ - 1));
    proof_.last = std::move(previous_);
    return std::move(proof_);
  }

 private:
  void block(std::int64_t first, std::int64_t last) {
    std::vector<book::Entry> entries;
    try {
      entries = reading_.entries_between({first}, {last});
    } catch (const std::exception& unreadable) {
      if (first == last) {
        broken(phrase("{} cannot be read: {}", name_of(tables_, first), unreadable.what()));
        if (const auto found = stored_.find(first); found != stored_.end()) {
          previous_ = found->second;
          stored_.erase(found);
        }
        return;
      }
      for (auto id = first; id <= last; ++id)
        block(id, id);
      return;
    }
    for (const auto& entry : entries)
      judge(entry);
  }

  void judge(const book::Entry& entry) {
    const auto found = stored_.find(entry.id.value);
    if (found == stored_.end()) {
      broken(phrase("{} has no link: it was not written by the program", name_of(entry, names_)));
      return;
    }
    std::string wanted;
    try {
      wanted = book::next_link(previous_, book::form_in_chain(entry, names_));
    } catch (const std::exception& unreadable) {
      wanted = unreadable.what();
    }
    if (wanted != found->second)
      broken(phrase("{} is not what was written, or an entry before it was taken out: its "
                    "link is {}, and what stands there gives {}",
                    name_of(entry, names_), found->second, wanted));
    previous_ = std::move(found->second);
    stored_.erase(found);
  }

  void broken(const std::string& what) {
    if (++broken_ == 1)
      proof_.faults.push_back("the chain breaks at " + what);
  }

  Tables& tables_;
  Reading& reading_;
  StoredNames names_;
  ChainProof proof_;
  std::map<std::int64_t, std::string> stored_;
  std::string previous_;
  std::int64_t broken_ = 0;
};

} // namespace

std::int64_t StoredNames::number(const char* table, std::int64_t id) {
  auto& number = numbers_[fmt::format("{} {}", table, id)];
  if (number == 0)
    number = tables_.ask(fmt::format("SELECT number FROM {} WHERE id = :id", table))
                 .with(id)
                 .number()
                 .value_or(0);
  return number;
}

std::int64_t StoredNames::cone(book::ConeId id) {
  return number("cone", id.value);
}
std::int64_t StoredNames::place(book::PlaceId id) {
  return number("place", id.value);
}
std::int64_t StoredNames::plant(book::PlantId id) {
  return number("plant", id.value);
}

std::int64_t StoredNames::pollen_lot(book::PollenLotId id) {
  return number("pollen_lot", id.value);
}

std::string StoredNames::lot(book::LotId id) {
  auto& told = lots_[id];
  if (told.empty())
    tables_
        .ask("SELECT kind, number, cone_id, purchase_id, judged, judged_by FROM lot WHERE id = :id")
        .with(id)
        .each([&](const Row& row) {
          const bool of_cone = row.has("cone_id");
          told = book::lot_in_chain(
              row.one_of<Kind>("kind"), row.whole("number"), of_cone,
              number(of_cone ? "cone" : "purchase", row.whole(of_cone ? "cone_id" : "purchase_id")),
              row.one_of<book::Judged>("judged"), row.one_of<book::SeedTest>("judged_by"));
        });
  return told;
}

void Chain::add(const book::Entry& entry) {
  if (!last_) {
    auto link = Reading(tables_).last_link();
    last_ = link ? std::move(link->hash) : std::string();
  }
  last_ = book::next_link(*last_, book::form_in_chain(entry, names_));
  tables_.ask("INSERT INTO entry_link (entry_id, hash) VALUES (:entry, :hash)")
      .with(entry.id)
      .with(*last_)
      .run();
}

void chain_older_entries(Tables& tables) {
  Reading reading(tables);
  if (reading.last_link())
    return;
  Chain chain(tables);
  const auto last = last_entry(tables);
  for (std::int64_t first = 1; first <= last; first += entries_at_once)
    for (const auto& entry :
         reading.entries_between({first}, {std::min(last, first + entries_at_once - 1)}))
      chain.add(entry);
}

ChainProof prove_chain(Tables& tables, Reading& reading, const Progress& progress) {
  return ProveChain(tables, reading).run(progress);
}

} // namespace coneline::store
