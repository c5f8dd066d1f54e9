// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Suppliers' offers as the grower keeps them in a file: one row an offer.
//
//   good,supplier,form,litres,cents                       bag, bulk or bale; litres and price of
//   one
//   [,expansion,delivery_cents,lead_days,least,kilograms] empty: 1, 0, 0, 1, not known
//   peat,The mill,bale,100,3000,2.5,0,14,4,32

#include "core/book/offer.h"

#include <filesystem>

namespace coneline::report {

/// Fails naming file, line and column on what cannot be read, on an unknown column and on a file
/// without an offer.
Result<std::vector<book::Offer>> read_offers(const std::filesystem::path& file);

} // namespace coneline::report
