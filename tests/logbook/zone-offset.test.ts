import { expect, test } from 'vitest';
import { zoneOffset } from '../../src/logbook/zone-offset';

const minute = (iso: string): number => Date.parse(iso) / 60_000;

// Source: the IANA time zone rules as published (EU: last Sundays of March and October at 01:00 UTC; US: second Sunday of
// March and first of November at 02:00 local; Lord Howe changes by half an hour; Kathmandu 5:45 all year).
test.each([
  { zone: 'Europe/Berlin', at: '2026-03-29T00:59:00Z', offset: 60 },
  { zone: 'Europe/Berlin', at: '2026-03-29T01:00:00Z', offset: 120 },
  { zone: 'Europe/Berlin', at: '2026-10-25T00:59:00Z', offset: 120 },
  { zone: 'Europe/Berlin', at: '2026-10-25T01:00:00Z', offset: 60 },
  { zone: 'America/New_York', at: '2026-03-08T06:59:00Z', offset: -300 },
  { zone: 'America/New_York', at: '2026-03-08T07:00:00Z', offset: -240 },
  { zone: 'Australia/Lord_Howe', at: '2026-01-15T00:00:00Z', offset: 660 },
  { zone: 'Australia/Lord_Howe', at: '2026-07-15T00:00:00Z', offset: 630 },
  { zone: 'Asia/Kathmandu', at: '2026-07-15T00:00:00Z', offset: 345 },
  { zone: 'UTC', at: '2026-07-15T00:00:00Z', offset: 0 },
])('$zone at $at', ({ zone, at, offset }) => {
  expect(zoneOffset(zone)(minute(at))).toBe(offset);
});
