// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that reads when a picture was taken, each handed on to it, which is
// loaded with the first picture.
#include "core/base/on_demand.h"

#include <libexif/exif-data.h>

namespace {

template <auto* Function>
decltype(Function) library(const char* name) {
  return coneline::on_demand<Function>(CONELINE_EXIF, name);
}

} // namespace

extern "C" {
ExifData* exif_data_new_from_file(const char* path) {
  return library<&::exif_data_new_from_file>("exif_data_new_from_file")(path);
}
void exif_data_unref(ExifData* data) {
  library<&::exif_data_unref>("exif_data_unref")(data);
}
ExifEntry* exif_content_get_entry(ExifContent* content, ExifTag tag) {
  return library<&::exif_content_get_entry>("exif_content_get_entry")(content, tag);
}
}
