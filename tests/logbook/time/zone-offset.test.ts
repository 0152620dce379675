import fc from 'fast-check';
import { expect, test } from 'vitest';
import { zoneOffset } from '../../../src/logbook/time/zone-offset';

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

test('agrees with the wall clock of the platform at any minute', () => {
  const zones = fc.constantFrom('Europe/Berlin', 'America/St_Johns', 'Africa/Casablanca', 'Pacific/Chatham');
  const minutes = fc.integer({ min: minute('2015-01-01T00:00:00Z'), max: minute('2030-01-01T00:00:00Z') });
  fc.assert(
    fc.property(zones, minutes, (timeZone, at) => {
      const parts = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'medium' });
      const wall = Date.parse(`${parts.format(at * 60_000).replace(' ', 'T')}Z`) / 60_000;
      expect(zoneOffset(timeZone)(at)).toBe(wall - at);
    }),
    { numRuns: 400 },
  );
});
