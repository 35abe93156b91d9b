import ICAL from "ical.js";

/** An event as ical.js reads it, which is a reader of RFC 5545 by others. */
export interface ReadEvent {
  readonly uid: string;
  readonly day: string;
  readonly summary: string;
  readonly description: string;
  readonly place: string | null;
  readonly categories: readonly string[];
  readonly status: string;
  readonly sequence: number;
  readonly stamp: string;
  readonly triggers: readonly string[];
}

export interface ReadCalendar {
  readonly name: string;
  readonly method: string;
  readonly events: readonly ReadEvent[];
}

/** Reads a calendar file; throws where the reader does. A property of no standard is a text (RFC 5545 3.8.8.2), which this reader has to be told. */
export function readIcs(text: string): ReadCalendar {
  const calendar = new ICAL.Component(ICAL.parse(text.replace("\r\nX-WR-CALNAME:", "\r\nX-WR-CALNAME;VALUE=TEXT:")) as unknown[]);
  return { name: value(calendar, "x-wr-calname"), method: value(calendar, "method"), events: calendar.getAllSubcomponents("vevent").map(eventOf) };
}

function value(component: ICAL.Component, name: string): string {
  return String(component.getFirstPropertyValue(name));
}

function eventOf(event: ICAL.Component): ReadEvent {
  const place = event.getFirstPropertyValue("location");
  return {
    uid: value(event, "uid"), day: value(event, "dtstart"), summary: value(event, "summary"), description: value(event, "description"),
    place: place === null ? null : String(place), categories: (event.getFirstProperty("categories")?.getValues() ?? []).map(String),
    status: value(event, "status"), sequence: Number(event.getFirstPropertyValue("sequence")), stamp: value(event, "dtstamp"),
    triggers: event.getAllSubcomponents("valarm").map((alarm) => value(alarm, "trigger")),
  };
}
