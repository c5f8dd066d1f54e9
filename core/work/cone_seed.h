// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What seed the cones that ripen on the plants will bring, and when it can be sown. Nobody knows
// either, so both are drawn.
//
//   seed that gets sown of a cone: what its batches had judged filled or sown, of cones whose seed
//   is sorted. Its logarithm is a bell whose mean m and spread s the book's cones tell, of this
//   plant where there are two, else of its taxon, against a wide prior worth one cone for the mean
//   and four for the spread: with n cones of mean x and sum of squares S,
//     m = (m0 + n x) / (1 + n),  v = (4 s0² + S + n (x - m0)² / (1 + n)) / (4 + n)
//     the next one:  m + t √(v (1 + 1/(1 + n))),  t Student's with 4 + n degrees of freedom
//   (conjugate normal model, from memory). A cone gives nothing with a chance that starts at the
//   usual one and follows the book's cones.
//   sown: ripe anywhere in what is left of its range, then ripened on as the taxon's seed does.

#include "core/work/cone_course.h"

namespace coneline::work {

/// What is usual where the book knows no cone of the taxon. Common practice, no source; wide, and
/// meant to be changed.
struct ConeHabits {
  double seeds = 60;       ///< half of the cones that give seed give more
  double spread = 0.9;     ///< of the logarithm: with its own doubt 8 in 10 give 9 to 420
  double gives = 0.8;      ///< share of pollinated cones that give seed at all
  double gives_weight = 5; ///< cones that is worth
  int months_overdue = 6;  ///< one that is later than this is named and not counted
  std::size_t draws = 120;
};

struct ConeSeedDraw {
  Date sown_on;
  std::int64_t seeds = 0;
};

struct ConeSeed {
  book::Cone cone;
  OriginName origin;
  std::vector<ConeSeedDraw> draws; ///< equally likely
  std::string basis;               ///< said: "3 earlier cones of the plant"
  bool usual_alone = false;        ///< it rests on common practice, no source
};

struct ConesToCome {
  std::vector<ConeSeed> cones;
  std::vector<std::string> left_out; ///< a sentence for each cone that is not counted, and why
};

/// Cones with a pass of pollen that are not harvested by `today`.
ConesToCome cones_to_come(store::Reading& reading, const book::Registers& registers, Date today,
                          const ConeHabits& habits = {});

} // namespace coneline::work
