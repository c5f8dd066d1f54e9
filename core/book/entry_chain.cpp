// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/entry_chain.h"

#include "core/base/number.h"

#include <fmt/format.h>

#include <array>
#include <nettle/sha2.h>

namespace coneline::book {

namespace {

/// Writes fields; what is empty is left out.
class Form {
 public:
  explicit Form(NamesInChain& names) : names_(names) { text_.reserve(256); }

  void field(std::string_view name, std::string_view value) {
    if (value.empty())
      return;
    fmt::format_to(std::back_inserter(text_), "{} {}:{}\n", name, value.size(), value);
  }
  void field(std::string_view name, std::int64_t value) { field(name, fmt::to_string(value)); }
  void field(std::string_view name, double value) { field(name, write_real(value)); }
  void field(std::string_view name, Date value) { field(name, value.iso()); }
  void field(std::string_view name, LotId id) { field(name, names_.lot(id)); }
  void field(std::string_view name, ConeId id) { field(name, names_.cone(id)); }
  void field(std::string_view name, PlaceId id) { field(name, names_.place(id)); }
  void field(std::string_view name, PollenLotId id) { field(name, names_.pollen_lot(id)); }
  void field(std::string_view name, PlantId id) { field(name, names_.plant(id)); }
  void field(std::string_view name, EntryId id) { field(name, id.value); }
  template <class Value>
  void field(std::string_view name, const std::optional<Value>& value) {
    if (value)
      field(name, *value);
  }

  void operator()(std::monostate) {}
  void operator()(const Pollination& detail) {
    field("method", word(detail.method));
    for (const auto& used : detail.pollen) {
      if (used.lot)
        field("pollen_lot", *used.lot);
      else
        field("pollen_lot", std::string_view("unknown"));
      field("millilitres", used.millilitres);
    }
  }
  void operator()(const Weighing& detail) {
    field("grams", detail.grams);
    for (const double hundred : detail.hundreds)
      field("hundred_grams", hundred);
  }
  void operator()(const Cleaning& detail) {
    field("soak_days", static_cast<std::int64_t>(detail.soak_days));
  }
  void operator()(const Sorting& detail) { field("test", word(detail.test)); }
  void operator()(const Keeping& detail) {
    field("store", detail.store);
    field("celsius", detail.celsius);
    field("until_from", detail.until_from);
    field("until_to", detail.until_to);
  }
  void operator()(const Sale& detail) {
    field("buyer", detail.buyer);
    field("cents", detail.cents);
  }

  void operator()(const ConeLook& detail) {
    field("scales", word(detail.scales));
    field("fertile_scales", detail.fertile_scales);
  }
  void operator()(const PlantNote& detail) {
    field("plant", detail.plant);
    if (detail.male_cone)
      field("male_cone", word(*detail.male_cone));
    field("to", detail.to);
  }
  void operator()(const PollenNote& detail) {
    field("pollen_lot", detail.lot);
    field("millilitres", detail.millilitres);
    field("counted", detail.counted);
    field("germinated", detail.germinated);
    field("conditions", detail.conditions);
  }
  void operator()(const Correction& detail) {
    for (const auto& change : detail.changes) {
      field("plant", change.plant);
      field("field", change.field);
      field("stood", change.stood);
      field("stands", change.stands);
    }
  }
  void operator()(const DueAnswer& detail) {
    field("due", detail.due);
    field("until", detail.until);
  }

  [[nodiscard]] std::string text() && { return std::move(text_); }

 private:
  NamesInChain& names_;
  std::string text_;
};

} // namespace

std::string lot_in_chain(Kind kind, std::int64_t number, bool of_cone, std::int64_t origin_number,
                         Judged judged, SeedTest judged_by) {
  return fmt::format("{} {} of {} {}, {} by {}", kind_word(kind), number,
                     of_cone ? "cone" : "purchase", origin_number, word(judged), word(judged_by));
}

std::string form_in_chain(const Entry& entry, NamesInChain& names) {
  Form form(names);
  form.field("entry", entry.id);
  form.field("verb", word(entry.verb));
  form.field("date", entry.date);
  form.field("lot", entry.lot);
  form.field("cone", entry.cone);
  form.field("place", entry.place);
  form.field("who", entry.who);
  form.field("note", entry.note);
  form.field("reverses", entry.reverses);
  form.field("entered", entry.entered);
  for (const auto& [from, to, count] : entry.movements) {
    form.field("from", from.lot);
    form.field("from_state", word(from.state));
    form.field("to", to.lot);
    form.field("to_state", word(to.state));
    form.field("count", count.value());
  }
  std::visit(form, entry.detail);
  return std::move(form).text();
}

std::string next_link(std::string_view previous, std::string_view form) {
  const auto bytes = [](std::string_view text) {
    return reinterpret_cast<const std::uint8_t*>(text.data());
  };
  sha256_ctx hash;
  sha256_init(&hash);
  sha256_update(&hash, previous.size(), bytes(previous));
  sha256_update(&hash, 1, bytes("\n"));
  sha256_update(&hash, form.size(), bytes(form));
  std::array<std::uint8_t, SHA256_DIGEST_SIZE> digest{};
  sha256_digest(&hash, digest.size(), digest.data());
  std::string link;
  link.reserve(2 * digest.size());
  constexpr std::string_view digits = "0123456789abcdef";
  for (const unsigned byte : digest) {
    link += digits[byte >> 4U];
    link += digits[byte & 15U];
  }
  return link;
}

} // namespace coneline::book
