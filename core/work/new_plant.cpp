// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/new_plant.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"
#include "core/work/known_or_new.h"
#include "core/work/resolve.h"

namespace coneline::work {

Result<Done> new_plant(store::Book& book, const NewPlant& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    KnownOrNew known(writing, {});
    const auto taxon = known.taxon(wanted.taxon);
    if (!taxon)
      return refuse(taxon.error());
    const auto place = place_coded(known.registers(), wanted.place);
    if (!place)
      return refuse(place.error());
    book::Plant plant;
    plant.name = wanted.name;
    plant.taxon = *taxon;
    plant.sex = wanted.sex;
    plant.origin = wanted.origin;
    plant.place = *place;
    plant.note = wanted.note;
    const auto added = known.add(plant);
    if (!added)
      return refuse(added.error());
    const auto& code = added->code;
    return Done{{},
                {code},
                phrase("{} {} is in the book", kind_said(code.kind()), code.text()),
                {phrase_of(caution::permit)}};
  });
}

} // namespace coneline::work
