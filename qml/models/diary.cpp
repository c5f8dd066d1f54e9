// SPDX-License-Identifier: GPL-3.0-or-later
#include "diary.h"

#include "core/book/cross.h"
#include "core/work/tell_label.h"
#include "wording.h"

namespace coneline::window {

namespace {

using Facts = std::vector<Rows::Row>;

void say(Facts& facts, const char* label, const QString& value) {
  if (!value.isEmpty())
    facts.push_back({phrased_of(label), value});
}

QString span(const std::optional<Date>& from, const std::optional<Date>& to) {
  if (!from)
    return {};
  return !to || *to == *from ? shown(*from) : shown(*from) + QChar(0x2013) + shown(*to);
}

Facts of_cone(const work::ConeCourse& course) {
  Facts facts;
  say(facts, "First seen", span(course.line.cone.first_seen, {}));
  if (!course.looks.empty())
    say(facts, "Scales",
        text(book::said(course.looks.back().scales)) + ", " + shown(course.looks.back().date));
  say(facts, "Took pollen", span(course.receptive_from, course.receptive_to));
  QStringList passes;
  for (const auto& pass : course.line.passes)
    passes << shown(pass);
  say(facts, "Passes", passes.join(", "));
  say(facts, "Closed", span(course.closed, {}));
  if (!course.line.harvested_on && course.ripe_from)
    say(facts, "May be ripe",
        span(course.ripe_from, course.ripe_to) + " (" + text(course.ripe_months.basis) + ")");
  if (course.seeds)
    say(facts, "Seeds expected",
        range(std::int64_t(course.seeds->low), std::int64_t(course.seeds->high)) + " (" +
            text(course.seeds->basis) + ")");
  return facts;
}

Facts of_pollen(const work::PollenLine& line) {
  Facts facts;
  if (line.gone)
    say(facts, "Left", phrased("nothing since {}", shown(*line.gone)));
  else if (line.left)
    say(facts, "Left",
        line.passes_unmeasured > 0
            ? phrased("at most {} ml of {}", shown(*line.left, 2), shown(*line.collected, 2))
            : phrased("{} ml of {}", shown(*line.left, 2), shown(*line.collected, 2)));
  say(facts, "Used", line.passes > 0 ? phrased_n(line.passes, "{} pass", "{} passes") : QString());
  if (line.old_from)
    say(facts, "Old from", span(line.old_from, line.old_to) + " (" + text(line.years_source) + ")");
  else if (!line.years_source.empty())
    say(facts, "How long it lasts", text(line.years_source));
  for (const auto& test : line.tests)
    say(facts, "Germinates",
        phrased("{}–{} %, {} of {} on {}", shown(100 * test.range.low, 0),
                shown(100 * test.range.high, 0), shown(test.germinated), shown(test.counted),
                shown(test.date)));
  return facts;
}

QString parent(const std::optional<book::PlantId>& id, const std::string& words,
               const book::Registers& registers) {
  if (!id)
    return words.empty() ? phrased("not known") : text(words);
  const auto& plant = registers.plant(*id);
  return text(book::plant_name(plant)) + ", " + text(plant.code.text());
}

Facts of_plant(const book::Plant& plant, const book::Registers& registers,
               const std::vector<work::ConeCourse>& courses) {
  Facts facts;
  if (plant.taxon_certainty != book::Certainty::certain)
    say(facts, "Taxon", text(book::said(plant.taxon_certainty)));
  say(facts, "Seed parent", parent(plant.seed_parent, plant.seed_parent_said, registers));
  say(facts, "Pollen parent", parent(plant.pollen_parent, plant.pollen_parent_said, registers));
  if (plant.parents_certainty != book::Certainty::certain)
    say(facts, "Parents", text(book::said(plant.parents_certainty)));
  if (plant.stands_in != book::StandsIn::not_known)
    say(facts, "Stands in", text(book::said(plant.stands_in)));
  for (const auto& course : courses)
    if (course.line.cone.plant == plant.id)
      say(facts, "Coned",
          text(course.line.cone.code.text()) + ", " +
              span(course.line.cone.first_seen ? course.line.cone.first_seen
                                               : course.receptive_from,
                   {}) +
              ", " +
              (course.line.harvested_on ? phrased_n(course.line.harvested, "{} seed", "{} seeds")
                                        : phrased("not harvested yet")));
  return facts;
}

Facts facts_of(const Standing& standing, const Code& code) {
  if (const auto* line = standing.pollen_lot(code))
    return of_pollen(*line);
  if (const auto* course = standing.cone_course(code))
    return of_cone(*course);
  if (const auto* plant = book::coded(standing.registers.plants, code))
    return of_plant(*plant, standing.registers, standing.cones);
  return {};
}

QString told(const work::ParentTold& parent) {
  QStringList parts{text(parent.name.empty() ? parent.taxon : parent.name) + ", " +
                    text(parent.code.text())};
  if (!parent.certainty.empty())
    parts << text(parent.taxon) + " " + phrased_of(parent.certainty);
  if (!parent.origin.empty())
    parts << phrased("from {}", parent.origin);
  if (parent.acquired)
    parts << phrased("since {}", shown(*parent.acquired));
  for (const auto& paper : parent.papers)
    parts << text(work::told(paper));
  return parts.join(QStringLiteral("; "));
}

/// What a label answers besides what the page says already.
void add_label(Facts& facts, const work::LabelTold& label) {
  for (const auto& due : label.due)
    say(facts, "Due", text(due.told));
  say(facts, "Nothing left", text(label.ended));
  say(facts, "Bought", text(label.bought));
  if (label.seed_parent)
    say(facts, "Seed parent", told(*label.seed_parent));
  for (const auto& parent : label.pollen_parents)
    say(facts, "Pollen parent", told(parent));
  if (label.unknown_father)
    say(facts, "Pollen parent", phrased("some or all of it not known"));
  if (label.last_seen)
    say(facts, "Label seen", shown(*label.last_seen));
}

} // namespace

Diary::Diary(QObject* parent) : QObject(parent), facts_({"label", "value"}, this) {
  connect(this, &Diary::asked, this, &Diary::read);
}

void Diary::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &Diary::read);
  emit asked();
}

void Diary::read() {
  if (!session_)
    return;
  const auto code = Code::parse(plain(code_));
  if (!code || !session_->is_open()) {
    facts_.replace({});
    return;
  }
  const auto& standing = session_->standing();
  auto facts = facts_of(standing, *code);
  if (standing.lot(*code) || standing.cone(*code))
    if (const auto label = session_->ask([&](store::Reading& reading) {
          return work::tell_label(reading, standing.registers, *code, session_->today());
        }))
      add_label(facts, *label);
  facts_.replace(std::move(facts));
}

} // namespace coneline::window
