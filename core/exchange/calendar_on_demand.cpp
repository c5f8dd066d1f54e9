// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of the library that reads and writes calendars, each handed on to it, which is
// loaded with the first calendar.
#include "core/base/on_demand.h"

#include <libical/ical.h>

namespace {

template <auto* Function>
decltype(Function) library(const char* name) {
  return coneline::on_demand<Function>(CONELINE_CALENDAR, name);
}

} // namespace

extern "C" {
void icalcomponent_add_component(icalcomponent* parent, icalcomponent* child) {
  library<&::icalcomponent_add_component>("icalcomponent_add_component")(parent, child);
}
void icalcomponent_add_property(icalcomponent* component, icalproperty* property) {
  library<&::icalcomponent_add_property>("icalcomponent_add_property")(component, property);
}
char* icalcomponent_as_ical_string_r(icalcomponent* component) {
  return library<&::icalcomponent_as_ical_string_r>("icalcomponent_as_ical_string_r")(component);
}
void icalcomponent_free(icalcomponent* component) {
  library<&::icalcomponent_free>("icalcomponent_free")(component);
}
icaltimetype icalcomponent_get_dtend(icalcomponent* component) {
  return library<&::icalcomponent_get_dtend>("icalcomponent_get_dtend")(component);
}
icaltimetype icalcomponent_get_dtstart(icalcomponent* component) {
  return library<&::icalcomponent_get_dtstart>("icalcomponent_get_dtstart")(component);
}
icaltimetype icalcomponent_get_due(icalcomponent* component) {
  return library<&::icalcomponent_get_due>("icalcomponent_get_due")(component);
}
icalcomponent* icalcomponent_get_first_component(icalcomponent* component,
                                                 icalcomponent_kind kind) {
  return library<&::icalcomponent_get_first_component>("icalcomponent_get_first_component")(
      component, kind);
}
icalproperty* icalcomponent_get_first_property(icalcomponent* component, icalproperty_kind kind) {
  return library<&::icalcomponent_get_first_property>("icalcomponent_get_first_property")(component,
                                                                                          kind);
}
icalcomponent* icalcomponent_get_next_component(icalcomponent* component, icalcomponent_kind kind) {
  return library<&::icalcomponent_get_next_component>("icalcomponent_get_next_component")(component,
                                                                                          kind);
}
int icalcomponent_get_sequence(icalcomponent* component) {
  return library<&::icalcomponent_get_sequence>("icalcomponent_get_sequence")(component);
}
icalproperty_status icalcomponent_get_status(icalcomponent* component) {
  return library<&::icalcomponent_get_status>("icalcomponent_get_status")(component);
}
const char* icalcomponent_get_uid(icalcomponent* component) {
  return library<&::icalcomponent_get_uid>("icalcomponent_get_uid")(component);
}
icalcomponent_kind icalcomponent_isa(const icalcomponent* component) {
  return library<&::icalcomponent_isa>("icalcomponent_isa")(component);
}
icalcomponent* icalcomponent_new(icalcomponent_kind kind) {
  return library<&::icalcomponent_new>("icalcomponent_new")(kind);
}
icalcomponent* icalcomponent_new_vcalendar() {
  return library<&::icalcomponent_new_vcalendar>("icalcomponent_new_vcalendar")();
}
void icalmemory_free_buffer(void* buffer) {
  library<&::icalmemory_free_buffer>("icalmemory_free_buffer")(buffer);
}
icalcomponent* icalparser_parse_string(const char* text) {
  return library<&::icalparser_parse_string>("icalparser_parse_string")(text);
}
icaltimetype icalproperty_get_completed(const icalproperty* property) {
  return library<&::icalproperty_get_completed>("icalproperty_get_completed")(property);
}
icalproperty* icalproperty_new_categories(const char* value) {
  return library<&::icalproperty_new_categories>("icalproperty_new_categories")(value);
}
icalproperty* icalproperty_new_completed(icaltimetype value) {
  return library<&::icalproperty_new_completed>("icalproperty_new_completed")(value);
}
icalproperty* icalproperty_new_description(const char* value) {
  return library<&::icalproperty_new_description>("icalproperty_new_description")(value);
}
icalproperty* icalproperty_new_dtend(icaltimetype value) {
  return library<&::icalproperty_new_dtend>("icalproperty_new_dtend")(value);
}
icalproperty* icalproperty_new_dtstamp(icaltimetype value) {
  return library<&::icalproperty_new_dtstamp>("icalproperty_new_dtstamp")(value);
}
icalproperty* icalproperty_new_dtstart(icaltimetype value) {
  return library<&::icalproperty_new_dtstart>("icalproperty_new_dtstart")(value);
}
icalproperty* icalproperty_new_due(icaltimetype value) {
  return library<&::icalproperty_new_due>("icalproperty_new_due")(value);
}
icalproperty* icalproperty_new_prodid(const char* value) {
  return library<&::icalproperty_new_prodid>("icalproperty_new_prodid")(value);
}
icalproperty* icalproperty_new_sequence(int value) {
  return library<&::icalproperty_new_sequence>("icalproperty_new_sequence")(value);
}
icalproperty* icalproperty_new_status(icalproperty_status value) {
  return library<&::icalproperty_new_status>("icalproperty_new_status")(value);
}
icalproperty* icalproperty_new_summary(const char* value) {
  return library<&::icalproperty_new_summary>("icalproperty_new_summary")(value);
}
icalproperty* icalproperty_new_transp(icalproperty_transp value) {
  return library<&::icalproperty_new_transp>("icalproperty_new_transp")(value);
}
icalproperty* icalproperty_new_uid(const char* value) {
  return library<&::icalproperty_new_uid>("icalproperty_new_uid")(value);
}
icalproperty* icalproperty_new_version(const char* value) {
  return library<&::icalproperty_new_version>("icalproperty_new_version")(value);
}
icaltimetype icaltime_from_string(const char* text) {
  return library<&::icaltime_from_string>("icaltime_from_string")(text);
}
int icaltime_is_null_time(icaltimetype time) {
  return library<&::icaltime_is_null_time>("icaltime_is_null_time")(time);
}
icaltimetype icaltime_null_date() {
  return library<&::icaltime_null_date>("icaltime_null_date")();
}
icaltimezone* icaltimezone_get_utc_timezone() {
  return library<&::icaltimezone_get_utc_timezone>("icaltimezone_get_utc_timezone")();
}
}
