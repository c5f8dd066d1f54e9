// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/ranking.h"

#include "core/base/phrase.h"
#include "core/report/cross_said.h"
#include "core/stats/told_apart.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

namespace coneline::report {

std::string letters_of(std::size_t number) {
  std::string letters;
  for (++number; number > 0; number = (number - 1) / 26)
    letters.insert(letters.begin(), static_cast<char>('a' + (number - 1) % 26));
  return letters;
}

void rank(GerminationReport& report) {
  auto& crosses = report.crosses;
  report.ranking.resize(crosses.size());
  std::iota(report.ranking.begin(), report.ranking.end(), 0);
  std::ranges::stable_sort(report.ranking, std::greater<>(), [&](std::size_t place) {
    return crosses[place].figures.final.share.value_or(-1);
  });
  std::vector<std::size_t> standing(crosses.size());
  for (std::size_t at = 0; at < report.ranking.size(); ++at) {
    standing[report.ranking[at]] = at;
    crosses[report.ranking[at]].rank = at + 1;
  }
  std::vector<stats::Apart> apart;
  for (const auto& pair : report.comparisons)
    if (pair.p_adjusted && *pair.p_adjusted < 1 - report.confidence)
      apart.push_back({standing[pair.a], standing[pair.b]});
  report.alike = stats::not_told_apart(crosses.size(), apart);
  for (std::size_t set = 0; set < report.alike.size(); ++set)
    for (auto& member : report.alike[set]) {
      member = report.ranking[member];
      auto& letters = crosses[member].alike;
      letters += (letters.empty() ? "" : " ") + letters_of(set);
    }
}

std::vector<std::string> alike_told(const GerminationReport& report) {
  std::vector<std::string> sentences;
  for (std::size_t set = 0; set < report.alike.size(); ++set) {
    const auto& members = report.alike[set];
    if (members.size() < 2)
      continue;
    std::string names;
    for (std::size_t i = 0; i < members.size(); ++i) {
      const auto name = name_said(report.crosses[members[i]]);
      names = i == 0                    ? name
              : i + 1 == members.size() ? phrase("{} and {}", names, name)
                                        : names + "; " + name;
    }
    sentences.push_back(phrase("{}: {} cannot be told apart.", letters_of(set), names));
  }
  return sentences;
}

std::string alike_method_told() {
  return phrase(
      "Crosses that share a letter cannot be told apart: the difference between their shares "
      "may "
      "be chance. Every pair is compared, with the spread between trays counted in and Holm's "
      "adjustment over all pairs. Cannot be told apart does not mean equal.");
}

std::string band_told() {
  return phrase(
      "The steps are what was seen, each tray counting for as long as it was looked at "
      "(Turnbull's estimate). The band is, day by day, the range in which the share germinated "
      "by that day lies, from "
      "the covariance of the curve's three values (delta method on the logit), widened by the "
      "spread between trays. It is for each day alone and takes the family of the curve to be "
      "right.");
}

std::string no_cross_told(const GerminationReport& report) {
  if (report.left_out.empty())
    return phrase("No tray had been sown by then.");
  return phrase_n(std::ssize(report.left_out),
                  "{} tray had been sown by then, and it is left out, see below.",
                  "{} trays had been sown by then, and all are left out, see below.");
}

std::string lacking_told(const GerminationReport& report) {
  if (!report.degree_days)
    return "";
  int trays = 0;
  int lacking = 0;
  for (const auto& cross : report.crosses)
    for (const auto& tray : cross.trays) {
      trays += tray.days_lacking > 0 ? 1 : 0;
      lacking += tray.days_lacking;
    }
  auto text = phrase("Degree-days above {:g} °C by the {} method.", report.degree_days->base,
                     phrase_of(stats::degree_days_word(report.degree_days->method)));
  if (lacking > 0)
    text += phrase(" {} days of {} trays have no temperature and count like the mean of the "
                   "tray's other days.",
                   lacking, trays);
  else if (!report.crosses.empty())
    text += " " + phrase("No day lacks a temperature.");
  if (!report.left_out.empty())
    text += phrase_n(std::ssize(report.left_out), " {} tray is left out, see below.",
                     " {} trays are left out, see below.");
  return text;
}

} // namespace coneline::report
