import { dayOf } from "./list-form.ts";
import { dayName } from "./list-code.ts";

/** One day in a calendar. All texts are free and are escaped here. */
export interface CalendarDay {
  /** Tells this entry from all others; the same again replaces it. */
  readonly uid: string;
  /** When the entry was made, in UTC: `2026-11-16T09:00:00Z`. */
  readonly stampedAt: string;
  /** The day, as `2026-12-04`. */
  readonly on: string;
  readonly title: string;
  readonly description: string;
  readonly url: string;
}

const MOST_OCTETS = 75;

const escaped = (text: string): string => text.replace(/\\/g, "\\\\").replace(/;/g, "\\;").replace(/,/g, "\\,").replace(/\r\n|\r|\n/g, "\\n");

const octetsOf = (character: string): number => {
  const code = character.codePointAt(0) as number;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
};

/** A long line goes on behind a line break and a space; no line has more than 75 octets, and no character is cut. */
const folded = (line: string): string => {
  const lines: string[] = [];
  let open = "";
  let octets = 0;
  for (const character of line) {
    const more = octetsOf(character);
    if (octets + more > MOST_OCTETS) {
      lines.push(open);
      open = " ";
      octets = 1;
    }
    open += character;
    octets += more;
  }
  return [...lines, open].join("\r\n");
};

const compact = (text: string): string => text.replace(/[-:]/g, "").replace(/\.\d+/, "");

/** A calendar file with one whole day (RFC 5545, Internet Calendaring and Scheduling, 2009: 3.1 folding, 3.3.11 escaping, 3.6.1 event). */
export const calendarText = ({ uid, stampedAt, on, title, description, url }: CalendarDay): string => {
  const day = dayOf(on);
  if (day === null) throw new RangeError(`on must be a calendar day such as 2026-12-04, got ${on}`);
  const lines = [
    "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Small Knee Workbook//Teaching list//EN", "BEGIN:VEVENT",
    `UID:${escaped(uid)}`, `DTSTAMP:${compact(stampedAt)}`, `DTSTART;VALUE=DATE:${compact(on)}`, `DTEND;VALUE=DATE:${compact(dayName(day + 1))}`,
    `SUMMARY:${escaped(title)}`, `DESCRIPTION:${escaped(description)}`, `URL:${url}`, "TRANSP:TRANSPARENT", "END:VEVENT", "END:VCALENDAR",
  ];
  return `${lines.map(folded).join("\r\n")}\r\n`;
};
