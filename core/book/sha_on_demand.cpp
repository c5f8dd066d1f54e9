// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that makes digests, each handed on to it, which is loaded with the
// first entry that is made or proven.
#include "core/base/on_demand.h"

#include <nettle/sha2.h>

namespace {

template <auto* Function>
decltype(Function) library(const char* name) {
  return coneline::on_demand<Function>(CONELINE_SHA, name);
}

} // namespace

extern "C" {
void nettle_sha256_init(struct sha256_ctx* hash) {
  library<&::nettle_sha256_init>("nettle_sha256_init")(hash);
}
void nettle_sha256_update(struct sha256_ctx* hash, size_t length, const uint8_t* data) {
  library<&::nettle_sha256_update>("nettle_sha256_update")(hash, length, data);
}
void nettle_sha256_digest(struct sha256_ctx* hash, size_t length, uint8_t* digest) {
  library<&::nettle_sha256_digest>("nettle_sha256_digest")(hash, length, digest);
}
}
