// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The places and pieces of a placing, checked and laid out by light class. Private to the placing.

#include "core/plan/placing_class.h"

#include <map>
#include <set>

namespace coneline::plan {

/// What pots can stand on of a place of which so many m² are taken by its bays: a shorter bench.
Ground ground_of(const book::Place& place, double taken_square_metres, double gap_mm,
                 Pattern pattern);

class PlacingLayout {
 public:
  explicit PlacingLayout(const PlacingInput& input);

  /// Fails on a pin that cannot be kept, and on pins that do not fit together.
  Result<void> know_pins();
  [[nodiscard]] PlacingClass light_class(book::Light light) const;
  /// Places without a size in which lots stand, and pots that are larger than any place.
  [[nodiscard]] std::vector<std::string> remarks() const;

 private:
  struct Stand {
    const book::Place* place = nullptr;
    Ground ground;
    std::optional<double> bears;
    book::Frost frost = book::Frost::not_known;
  };

  [[nodiscard]] const Stand* find(book::PlaceId id) const;
  /// Why a piece can never stand there; empty where it can.
  [[nodiscard]] std::string against(const Piece& piece, const Stand& stand) const;
  Result<void> know_pin(const Code& code, book::PlaceId id);
  [[nodiscard]] Result<void> pins_fit() const;

  const PlacingInput& input_;
  std::vector<Stand> stands_;                   ///< that have room
  std::map<std::size_t, book::PlaceId> pinned_; ///< by piece
};

} // namespace coneline::plan
