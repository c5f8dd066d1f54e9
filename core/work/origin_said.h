// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The name of an origin (work::OriginName) is a key: targets and papers are found by it, so it is
// the same in every language. Here it is said to a person.

#include "core/book/registers.h"

#include <string>

namespace coneline::work {

/// "Q1717 of 2024-06-03, from Quillbrook Plants".
std::string purchase_name(const book::Purchase& purchase);

/// As people have them on a screen, or ISO as in everything that is saved and printed.
enum class Days { as_read, iso };

/// The name in the language of who reads it: a purchase with its day, a father nobody knows. What
/// the grower named stays as it is.
std::string origin_said(const std::string& name, Days days = Days::as_read);

} // namespace coneline::work
