// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Words that stand alone on paper and on a page: over a column, before a value. A short word says
// too little to be translated by itself ("pot" is a thing or a deed), so in the catalogues it
// stands as "heading: pot"; where that has no translation it is said as any other text.

#include <string>
#include <string_view>

namespace coneline {

std::string as_heading(std::string_view english);

} // namespace coneline
