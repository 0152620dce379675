// The logbook of the app released before entries had a second version, built from its commit 8a00780. Never edited: phones still run it.
var e = {
	lang: void 0,
	message: void 0,
	abortEarly: void 0,
	abortPipeEarly: void 0
};
/* @__NO_SIDE_EFFECTS__ */
function t(t) {
	return t ? {
		lang: t?.lang ?? void 0,
		message: t?.message,
		abortEarly: t?.abortEarly ?? void 0,
		abortPipeEarly: t?.abortPipeEarly ?? void 0
	} : e;
}
/* @__NO_SIDE_EFFECTS__ */
function n(e) {
	let t = typeof e;
	return t === "string" ? `"${e}"` : t === "number" || t === "bigint" || t === "boolean" ? `${e}` : t === "object" || t === "function" ? (e && Object.getPrototypeOf(e)?.constructor?.name) ?? "null" : t;
}
function r(e, t, r, i, a) {
	let o = a && "input" in a ? a.input : r.value, s = a?.expected ?? e.expects ?? null, c = a?.received ?? /* @__PURE__ */ n(o), l = {
		kind: e.kind,
		type: e.type,
		input: o,
		expected: s,
		received: c,
		message: `Invalid ${t}: ${s ? `Expected ${s} but r` : "R"}eceived ${c}`,
		requirement: e.requirement,
		path: a?.path,
		issues: a?.issues,
		lang: i.lang,
		abortEarly: i.abortEarly,
		abortPipeEarly: i.abortPipeEarly
	}, u = e.kind === "schema", d = a?.message ?? e.message ?? (e.reference, l.lang, void 0) ?? (u ? (l.lang, void 0) : null) ?? i.message ?? (l.lang, void 0);
	d !== void 0 && (l.message = typeof d == "function" ? d(l) : d), u && (r.typed = !1), r.issues ? r.issues.push(l) : r.issues = [l];
}
/* @__NO_SIDE_EFFECTS__ */
function i(e, t) {
	return e === t || Number.isNaN(e) && Number.isNaN(t);
}
/* @__NO_SIDE_EFFECTS__ */
function a(e, t) {
	let n = [...new Set(e)];
	return n.length > 1 ? `(${n.join(` ${t} `)})` : n[0] ?? "never";
}
function o(e) {
	return e["~standard"] = {
		version: 1,
		vendor: "valibot",
		validate: (n) => e["~run"]({ value: n }, /* @__PURE__ */ t())
	}, e;
}
/* @__NO_SIDE_EFFECTS__ */
function s(e) {
	if (e.path) {
		let t = "";
		for (let n of e.path) if (typeof n.key == "string" || typeof n.key == "number") t += t ? `.${n.key}` : n.key;
		else return null;
		return t;
	}
	return null;
}
/* @__NO_SIDE_EFFECTS__ */
function c(e, t) {
	return {
		kind: "validation",
		type: "check",
		reference: c,
		async: !1,
		expects: null,
		requirement: e,
		message: t,
		"~run"(e, t) {
			return e.typed && !this.requirement(e.value) && r(this, "input", e, t), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function l(e) {
	return {
		kind: "validation",
		type: "finite",
		reference: l,
		async: !1,
		expects: null,
		requirement: Number.isFinite,
		message: e,
		"~run"(e, t) {
			return e.typed && !this.requirement(e.value) && r(this, "finite", e, t), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function u(e, t) {
	return {
		kind: "validation",
		type: "length",
		reference: u,
		async: !1,
		expects: `${e}`,
		requirement: e,
		message: t,
		"~run"(e, t) {
			return e.typed && e.value.length !== this.requirement && r(this, "length", e, t, { received: `${e.value.length}` }), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function d(e, t) {
	return {
		kind: "validation",
		type: "max_length",
		reference: d,
		async: !1,
		expects: `<=${e}`,
		requirement: e,
		message: t,
		"~run"(e, t) {
			return e.typed && e.value.length > this.requirement && r(this, "length", e, t, { received: `${e.value.length}` }), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function f(e, t) {
	return {
		kind: "validation",
		type: "max_value",
		reference: f,
		async: !1,
		expects: `<=${e instanceof Date ? e.toJSON() : /* @__PURE__ */ n(e)}`,
		requirement: e,
		message: t,
		"~run"(e, t) {
			return e.typed && !(e.value <= this.requirement) && r(this, "value", e, t, { received: e.value instanceof Date ? e.value.toJSON() : /* @__PURE__ */ n(e.value) }), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function p(e, t) {
	return {
		kind: "validation",
		type: "min_length",
		reference: p,
		async: !1,
		expects: `>=${e}`,
		requirement: e,
		message: t,
		"~run"(e, t) {
			return e.typed && e.value.length < this.requirement && r(this, "length", e, t, { received: `${e.value.length}` }), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function m(e, t) {
	return {
		kind: "validation",
		type: "min_value",
		reference: m,
		async: !1,
		expects: `>=${e instanceof Date ? e.toJSON() : /* @__PURE__ */ n(e)}`,
		requirement: e,
		message: t,
		"~run"(e, t) {
			return e.typed && !(e.value >= this.requirement) && r(this, "value", e, t, { received: e.value instanceof Date ? e.value.toJSON() : /* @__PURE__ */ n(e.value) }), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function h(e, t) {
	return {
		kind: "validation",
		type: "regex",
		reference: h,
		async: !1,
		expects: `${e}`,
		requirement: e,
		message: t,
		"~run"(e, t) {
			return e.typed && !this.requirement.test(e.value) && r(this, "format", e, t), e;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function ee() {
	return {
		kind: "transformation",
		type: "trim",
		reference: ee,
		async: !1,
		"~run"(e) {
			return e.value = e.value.trim(), e;
		}
	};
}
var te = { abortEarly: !0 };
/* @__NO_SIDE_EFFECTS__ */
function ne(e, t, n) {
	return typeof e.fallback == "function" ? e.fallback(t, n) : e.fallback;
}
/* @__NO_SIDE_EFFECTS__ */
function re(e, t) {
	return {
		...e,
		"~run"(n, r) {
			let i = n.issues && [...n.issues];
			if (n = e["~run"](n, r), n.issues) {
				for (let e of n.issues) if (!i?.includes(e)) {
					let r = n.value;
					for (let n of t) {
						let t = r[n], i = {
							type: "unknown",
							origin: "value",
							input: r,
							key: n,
							value: t
						};
						if (e.path ? e.path.push(i) : e.path = [i], !t) break;
						r = t;
					}
				}
			}
			return n;
		}
	};
}
/* @__NO_SIDE_EFFECTS__ */
function ie(e, t, n) {
	return typeof e.default == "function" ? e.default(t, n) : e.default;
}
/* @__NO_SIDE_EFFECTS__ */
function ae(e, t) {
	return !e["~run"]({ value: t }, te).issues;
}
/* @__NO_SIDE_EFFECTS__ */
function g(e, t) {
	return o({
		kind: "schema",
		type: "array",
		reference: g,
		expects: "Array",
		async: !1,
		item: e,
		message: t,
		"~run"(e, t) {
			let n = e.value;
			if (Array.isArray(n)) {
				e.typed = !0, e.value = [];
				for (let r = 0; r < n.length; r++) {
					let i = n[r], a = this.item["~run"]({ value: i }, t);
					if (a.issues) {
						let o = {
							type: "array",
							origin: "value",
							input: n,
							key: r,
							value: i
						};
						for (let t of a.issues) t.path ? t.path.unshift(o) : t.path = [o], e.issues?.push(t);
						if (e.issues ||= a.issues, t.abortEarly) {
							e.typed = !1;
							break;
						}
					}
					a.typed || (e.typed = !1), e.value.push(a.value);
				}
			} else r(this, "type", e, t);
			return e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function _(e) {
	return o({
		kind: "schema",
		type: "boolean",
		reference: _,
		expects: "boolean",
		async: !1,
		message: e,
		"~run"(e, t) {
			return typeof e.value == "boolean" ? e.typed = !0 : r(this, "type", e, t), e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function v(e, t) {
	return o({
		kind: "schema",
		type: "exact_optional",
		reference: v,
		expects: e.expects,
		async: !1,
		wrapped: e,
		default: t,
		"~run"(e, t) {
			return this.wrapped["~run"](e, t);
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function y(e, t) {
	return o({
		kind: "schema",
		type: "literal",
		reference: y,
		expects: /* @__PURE__ */ n(e),
		async: !1,
		literal: e,
		message: t,
		"~run"(e, t) {
			return /* @__PURE__ */ i(e.value, this.literal) ? e.typed = !0 : r(this, "type", e, t), e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function b(e) {
	return o({
		kind: "schema",
		type: "number",
		reference: b,
		expects: "number",
		async: !1,
		message: e,
		"~run"(e, t) {
			return typeof e.value == "number" && !isNaN(e.value) ? e.typed = !0 : r(this, "type", e, t), e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function x(e, t) {
	return o({
		kind: "schema",
		type: "object",
		reference: x,
		expects: "Object",
		async: !1,
		entries: e,
		message: t,
		"~run"(e, t) {
			let n = e.value;
			if (n && typeof n == "object") {
				e.typed = !0, e.value = {};
				for (let i in this.entries) {
					let a = this.entries[i];
					if (i in n || (a.type === "exact_optional" || a.type === "optional" || a.type === "nullish") && a.default !== void 0) {
						let r = i in n ? n[i] : /* @__PURE__ */ ie(a), o = a["~run"]({ value: r }, t);
						if (o.issues) {
							let a = {
								type: "object",
								origin: "value",
								input: n,
								key: i,
								value: r
							};
							for (let t of o.issues) t.path ? t.path.unshift(a) : t.path = [a], e.issues?.push(t);
							if (e.issues ||= o.issues, t.abortEarly) {
								e.typed = !1;
								break;
							}
						}
						o.typed || (e.typed = !1), e.value[i] = o.value;
					} else if (a.fallback !== void 0) e.value[i] = /* @__PURE__ */ ne(a);
					else if (a.type !== "exact_optional" && a.type !== "optional" && a.type !== "nullish" && (r(this, "key", e, t, {
						input: void 0,
						expected: `"${i}"`,
						path: [{
							type: "object",
							origin: "key",
							input: n,
							key: i,
							value: n[i]
						}]
					}), t.abortEarly)) break;
				}
			} else r(this, "type", e, t);
			return e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function S(e, t) {
	return o({
		kind: "schema",
		type: "picklist",
		reference: S,
		expects: /* @__PURE__ */ a(e.map(n), "|"),
		async: !1,
		options: e,
		message: t,
		"~run"(e, t) {
			return this.options.includes(e.value) ? e.typed = !0 : r(this, "type", e, t), e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function C(e) {
	return o({
		kind: "schema",
		type: "string",
		reference: C,
		expects: "string",
		async: !1,
		message: e,
		"~run"(e, t) {
			return typeof e.value == "string" ? e.typed = !0 : r(this, "type", e, t), e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function w(e, t, n) {
	return o({
		kind: "schema",
		type: "variant",
		reference: w,
		expects: "Object",
		async: !1,
		key: e,
		options: t,
		message: n,
		"~run"(e, t) {
			let n = e.value;
			if (n && typeof n == "object") {
				let i, o = 0, s = this.key, c = [], l = (e, r) => {
					for (let a of e.options) {
						if (a.type === "variant") l(a, new Set(r).add(a.key));
						else {
							let e = !0, l = 0;
							for (let t of r) {
								let r = a.entries[t];
								if (t in n ? r["~run"]({
									typed: !1,
									value: n[t]
								}, te).issues : r.type !== "exact_optional" && r.type !== "optional" && r.type !== "nullish") {
									e = !1, s !== t && (o < l || o === l && t in n && !(s in n)) && (o = l, s = t, c = []), s === t && c.push(a.entries[t].expects);
									break;
								}
								l++;
							}
							if (e) {
								let e = a["~run"]({ value: n }, t);
								(!i || !i.typed && e.typed) && (i = e);
							}
						}
						if (i && !i.issues) break;
					}
				};
				if (l(this, /* @__PURE__ */ new Set([this.key])), i) return i;
				r(this, "type", e, t, {
					input: n[s],
					expected: /* @__PURE__ */ a(c, "|"),
					path: [{
						type: "object",
						origin: "value",
						input: n,
						key: s,
						value: n[s]
					}]
				});
			} else r(this, "type", e, t);
			return e;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function T(...e) {
	return o({
		...e[0],
		pipe: e,
		"~run"(t, n) {
			for (let r of e) if (r.kind !== "metadata") {
				if (t.issues && (r.kind === "schema" || r.kind === "transformation")) {
					t.typed = !1;
					break;
				}
				t.issues && (n.abortEarly || n.abortPipeEarly) || (t = r["~run"](t, n));
			}
			return t;
		}
	});
}
/* @__NO_SIDE_EFFECTS__ */
function oe(e, n, r) {
	let i = e["~run"]({ value: n }, /* @__PURE__ */ t(r));
	return {
		typed: i.typed,
		success: !i.issues,
		output: i.value,
		issues: i.issues
	};
}
// src/result.ts
var E = (e) => ({
	ok: !0,
	value: e
}), D = (e) => ({
	ok: !1,
	failure: e
}), se = 273.15, ce = (e) => e + se, le = (e) => e - se, ue = (e) => (e - 32) * 5 / 9, de = (e) => e * 9 / 5 + 32, fe = 25.4, pe = (e) => e * fe, me = (e) => e / fe, he = (e) => e * 1e-6, ge = (e) => e * 1e6, _e = .09290304, ve = 29.5735295625, ye = 28.4130625, be = 3600, xe = 86400, Se = 64516e-8, Ce = 1e-4, we = .3048, Te = .45359237 / .003785411784, Ee = 365.25 / 12 * xe, De = {
	um: "µm",
	C: "°C",
	F: "°F",
	m2: "m²",
	cm2: "cm²",
	ft2: "ft²",
	in2: "in²",
	m3: "m³",
	ft3: "ft³",
	"m3/h": "m³/h",
	"fl-oz-us": "fl oz (US)",
	"fl-oz-imperial": "fl oz (imperial)"
}, Oe = (e) => e === "ratio" ? "" : De[e] ?? e, ke = (e) => String(e).replace("-", "−"), Ae = ({ lowest: e, highest: t, unit: n }) => `${ke(e)} to ${ke(t)} ${Oe(n)}`.trim(), O = {
	notANumber: "Write one number, such as 3.5 or 3,5.",
	outOfRange: (e) => `Give a value from ${Ae(e)}.`,
	notACount: ({ lowest: e, highest: t }) => `Give a whole number from ${e} to ${t}.`,
	notAShare: "Give a share above 0 and up to 100 %.",
	sharesDoNotAddUp: "The shares must add up to 100 %.",
	solventTwice: "A solvent stands in this blend twice; add its shares together.",
	emptyBlend: "Name at least one solvent.",
	longBlend: (e) => `Name at most ${e} solvents.`,
	empty: "Write something here.",
	tooLong: (e) => `Keep this to ${e} characters.`,
	notAnId: "is not an id of this logbook",
	notAnInstant: "is not a UTC time such as 2026-03-01T08:00:00.000Z",
	beforeEarliest: "Give a time from the year 2000 on.",
	inTheFuture: "Give a time no later than now; check the clock of this device.",
	notAZone: "is not a time zone that this device knows",
	notATableKey: "is not the name of a thing in the tables",
	notADay: "Give a day such as 2026-03-01.",
	notAnAmount: "Give an amount above 0.",
	notAMass: "Give a mass above 0 and up to 200 kg.",
	percentOfWhat: "Say whether the percentage is of the lacquer or of the mix.",
	byMassOrVolume: "Say whether this goes by mass or by volume.",
	emptyRecipe: "Give at least one ingredient with an amount.",
	longRecipe: (e) => `Give at most ${e} ingredients.`,
	longTinters: (e) => `Put at most ${e} tinters on the bench.`,
	tinterTwice: "A tinter stands on the bench twice.",
	noReading: "Give at least one reading.",
	longReadings: (e) => `Give at most ${e} readings at once.`,
	notAHex: "Write six hex digits, such as #e6dcc0.",
	notAClockTime: "Give a time of day such as 06:30.",
	windowEndsFirst: "The window must end after it begins. Look at both times on the sheet again.",
	dewAboveAir: "The dew point cannot lie above the air temperature. Look at both again.",
	wetAboveDry: "The wet bulb cannot read above the dry one. Look at both again.",
	wetTooLow: "No air is dry enough for a wet bulb that low. Look at both again.",
	bandOutOfOrder: "Earliest, likely and late must come in that order.",
	tooManySteps: "A plan has at most 200 steps. Split the job.",
	endsFirst: "It must end after it begins.",
	alwaysShown: "This caution is always shown.",
	notAnEntry: "is not an entry",
	unknownKind: "is a kind of entry that this version does not know; get the newest version of the app",
	newerVersion: "was written by a newer version of the app; get the newest version",
	missing: "is missing",
	expected: (e) => `must be ${e}`
}, k = (e) => ({
	toSi: (t) => t * e,
	fromSi: (t) => t / e
}), A = {
	um: {
		toSi: he,
		fromSi: ge
	},
	mil: {
		toSi: (e) => he(pe(e)),
		fromSi: (e) => me(ge(e))
	},
	C: {
		toSi: ce,
		fromSi: le
	},
	F: {
		toSi: (e) => ce(ue(e)),
		fromSi: (e) => de(le(e))
	},
	m2: k(1),
	cm2: k(Ce),
	ft2: k(_e),
	in2: k(Se),
	m: k(1),
	ft: k(we),
	"%": k(.01),
	ratio: k(1),
	s: k(1),
	min: k(60),
	h: k(be),
	d: k(xe),
	m3: k(1),
	ft3: k(we ** 3),
	"m3/h": k(1 / be),
	cfm: k(we ** 3 / 60),
	g: k(.001),
	mL: {
		toSi: (e) => e / 1e6,
		fromSi: (e) => e * 1e6
	},
	L: k(.001),
	"fl-oz-us": k(ve * 1e-6),
	"fl-oz-imperial": k(ye * 1e-6),
	"g/mL": k(1e3),
	"lb/gal": k(Te),
	drops: k(1),
	parts: k(1),
	months: k(Ee)
}, j = (e, t, ...n) => ({
	lowest: e,
	highest: t,
	units: n
}), M = {
	wetFilm: j(1, 1e3, "um", "mil"),
	dryFilm: j(.1, 500, "um", "mil"),
	oldFilm: j(1, 2e3, "um", "mil"),
	removed: j(.1, 500, "um", "mil"),
	area: j(1e-4, 100, "m2", "cm2", "ft2", "in2"),
	temperature: j(-20, 60, "C", "F"),
	humidity: j(1, 100, "%"),
	humidityCorrection: j(-30, 30, "%"),
	altitude: j(-430, 5e3, "m", "ft"),
	volumeSolids: j(.1, 100, "%"),
	thinningOfLacquer: j(0, 1e3, "%"),
	thinningOfMix: j(0, 95, "%"),
	retarderOfLacquer: j(0, 100, "%"),
	retarderOfMix: j(0, 50, "%"),
	pigmentOfSolids: j(0, 60, "%"),
	flakeAspect: j(1, 200, "ratio"),
	roomVolume: j(1, 1e5, "m3", "ft3"),
	airFlow: j(1, 5e5, "m3/h", "cfm"),
	mixingFactor: j(1, 10, "ratio"),
	explosiveLimit: j(.1, 30, "%"),
	sprayTime: j(.5, 720, "min", "h"),
	wearTime: j(.1, 1e3, "h"),
	openTime: j(.5, 730, "d"),
	dwell: j(1, 3600, "s", "min"),
	sheetTime: j(.5, 1e5, "min", "h", "d"),
	totalFilm: j(10, 1e3, "um", "mil"),
	volume: j(.05, 1e5, "mL", "L", "fl-oz-us", "fl-oz-imperial"),
	mass: j(1e-4, 2e5, "g"),
	density: j(.5, 5, "g/mL", "lb/gal"),
	dropMass: j(.001, 1, "g"),
	solids: j(0, 100, "%"),
	pigment: j(0, 95, "%"),
	critical: j(10, 95, "%"),
	life: j(.1, 1e5, "h", "d", "months"),
	keepBack: j(0, 90, "%"),
	division: j(1e-4, 100, "g"),
	lightness: j(0, 100, "ratio"),
	opponent: j(-128, 128, "ratio"),
	tristimulus: j(0, 125, "ratio"),
	luminance: j(0, 100, "ratio"),
	tolerance: j(.1, 5, "ratio"),
	yellowing: j(0, 5, "ratio"),
	tintShare: j(.01, 90, "%"),
	reflectance: j(2, 99, "%")
}, N = {
	passes: {
		lowest: 1,
		highest: 50
	},
	blendParts: {
		lowest: 1,
		highest: 20
	},
	text: {
		lowest: 1,
		highest: 1e4
	},
	recipeLines: {
		lowest: 1,
		highest: 40
	},
	coats: {
		lowest: 1,
		highest: 100
	},
	tinters: {
		lowest: 0,
		highest: 12
	},
	readings: {
		lowest: 1,
		highest: 100
	},
	planMinutes: {
		lowest: 0,
		highest: 1051200
	},
	coatsADay: {
		lowest: 1,
		highest: 24
	},
	planSteps: {
		lowest: 0,
		highest: 200
	},
	tries: {
		lowest: 1,
		highest: 100
	},
	bands: {
		lowest: 2,
		highest: 500
	}
};
function je(e, t) {
	let [n] = e.units;
	if (t === n) return {
		lowest: e.lowest,
		highest: e.highest
	};
	let r = (e) => A[t].fromSi(A[n].toSi(e));
	return {
		lowest: Me(r(e.lowest), Math.ceil),
		highest: Me(r(e.highest), Math.floor)
	};
}
function Me(e, t) {
	if (e === 0) return 0;
	let n = 10 ** (Math.floor(Math.log10(Math.abs(e))) - 2);
	return Number((t(Number((e / n).toPrecision(12))) * n).toPrecision(3));
}
// src/logbook/typed.ts
var Ne = /^[+-]?(\d{1,15}([.,]\d{0,15})?|[.,]\d{1,15})$/;
function Pe(e) {
	let t = e.trim().replace("−", "-");
	return Ne.test(t) ? Number(t.replace(",", ".")) : void 0;
}
function Fe(e, t) {
	let n = Pe(e.text);
	if (n === void 0) return D(O.notANumber);
	let r = A[e.unit].toSi(n), i = A[t.units[0]].toSi;
	return r >= i(t.lowest) && r <= i(t.highest) ? E(r) : D(O.outOfRange({
		...je(t, e.unit),
		unit: e.unit
	}));
}
var Ie = (e) => ({
	si: A[e.unit].toSi(Pe(e.text) ?? NaN),
	typed: e
}), P = (e) => /* @__PURE__ */ T(/* @__PURE__ */ x({
	text: /* @__PURE__ */ C(),
	unit: /* @__PURE__ */ S(e.units)
}), /* @__PURE__ */ c((t) => Fe(t, e).ok, ({ input: t }) => {
	let n = Fe(t, e);
	return n.ok ? "" : n.failure;
})), Le = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/, Re = "2000-01-01T00:00:00.000Z", F = /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ h(Le, O.notAnId)), I = /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ c((e) => {
	let t = Date.parse(e);
	return Number.isFinite(t) && new Date(t).toISOString() === e;
}, O.notAnInstant), /* @__PURE__ */ c((e) => e >= Re, O.beforeEarliest)), ze = /* @__PURE__ */ new Set();
function Be(e) {
	if (ze.has(e)) return !0;
	try {
		new Intl.DateTimeFormat("en", { timeZone: e });
	} catch {
		return !1;
	}
	return ze.add(e), !0;
}
var Ve = /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ d(64), /* @__PURE__ */ c(Be, O.notAZone)), He = /* @__PURE__ */ p(N.text.lowest, O.empty), Ue = /* @__PURE__ */ d(N.text.highest, O.tooLong(N.text.highest)), L = /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ ee(), He, Ue), R = /* @__PURE__ */ T(/* @__PURE__ */ C(), Ue), z = /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ h(/^[a-z0-9]+(-[a-z0-9]+)*$/, O.notATableKey)), We = /* @__PURE__ */ T(/* @__PURE__ */ b(), /* @__PURE__ */ c((e) => e > 0 && e <= 1, O.notAShare)), Ge = /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ c((e) => /^\d{4}-\d\d-\d\d$/.test(e) && (/* @__PURE__ */ new Date(`${e}T00:00:00Z`)).toJSON()?.startsWith(e) === !0, O.notADay)), B = /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ h(/^([01]\d|2[0-3]):[0-5]\d$/, O.notAClockTime)), V = (e) => /* @__PURE__ */ T(/* @__PURE__ */ b(), /* @__PURE__ */ c((t) => Number.isInteger(t) && t >= e.lowest && t <= e.highest, O.notACount(e))), H = (e, t) => /* @__PURE__ */ x({
	id: F,
	v: /* @__PURE__ */ y(1),
	kind: /* @__PURE__ */ y(e),
	at: I,
	zone: Ve,
	...t
}), Ke = /* @__PURE__ */ S([
	"still",
	"gentle",
	"booth",
	"strong"
]), qe = /* @__PURE__ */ w("by", [/* @__PURE__ */ x({
	by: /* @__PURE__ */ y("dew-point"),
	temperature: P(M.temperature)
}), /* @__PURE__ */ x({
	by: /* @__PURE__ */ y("wet-bulb"),
	temperature: P(M.temperature)
})]), Je = {
	"air-read": H("air-read", {
		temperature: P(M.temperature),
		humidity: P(M.humidity),
		humidityFrom: /* @__PURE__ */ v(qe),
		correction: /* @__PURE__ */ v(P(M.humidityCorrection)),
		movement: Ke,
		pieceTemperature: /* @__PURE__ */ v(P(M.temperature))
	}),
	"forecast-set": H("forecast-set", {
		dayTemperature: P(M.temperature),
		nightTemperature: P(M.temperature),
		dayFrom: B,
		nightFrom: B,
		humidity: /* @__PURE__ */ v(P(M.humidity)),
		movement: Ke
	})
}, Ye = {
	"filter-opened": H("filter-opened", {
		filter: F,
		part: /* @__PURE__ */ S([
			"cartridge",
			"prefilter",
			"booth-filter"
		]),
		name: L,
		wear: /* @__PURE__ */ v(P(M.wearTime)),
		open: /* @__PURE__ */ v(P(M.openTime)),
		basis: /* @__PURE__ */ v(R)
	}),
	"filter-thrown-out": H("filter-thrown-out", { filter: F })
}, Xe = [
	"spray",
	"brush",
	"mix",
	"sand",
	"end-day"
], Ze = ["dust", "skin"], Qe = (e) => Ze.some((t) => t === e), $e = /* @__PURE__ */ T(/* @__PURE__ */ g(z), /* @__PURE__ */ p(1, O.empty)), et = {
	"cautions-read": H("cautions-read", {
		act: /* @__PURE__ */ S(Xe),
		cautions: $e
	}),
	"caution-silenced": H("caution-silenced", {
		caution: /* @__PURE__ */ T(z, /* @__PURE__ */ c(Qe, O.alwaysShown)),
		silenced: /* @__PURE__ */ _()
	})
}, tt = { checked: H("checked", {
	piece: F,
	test: /* @__PURE__ */ S([
		"print",
		"gum",
		"smell",
		"blush"
	]),
	result: /* @__PURE__ */ S(["passes", "fails"])
}) }, nt = [
	"spray",
	"brush",
	"pad",
	"brush-fill",
	"flash"
], rt = [
	"scuff",
	"level",
	"rub-out"
], it = /* @__PURE__ */ w("by", [
	/* @__PURE__ */ x({
		by: /* @__PURE__ */ y("wet"),
		wetFilm: P(M.wetFilm)
	}),
	/* @__PURE__ */ x({
		by: /* @__PURE__ */ y("passes"),
		passes: V(N.passes),
		perPass: P(M.wetFilm)
	}),
	/* @__PURE__ */ x({
		by: /* @__PURE__ */ y("usual"),
		dryFilm: P(M.dryFilm)
	})
]), at = {
	"coat-laid": H("coat-laid", {
		piece: F,
		jar: F,
		how: /* @__PURE__ */ S(nt),
		film: it,
		air: /* @__PURE__ */ v(F)
	}),
	sanded: H("sanded", {
		piece: F,
		removed: P(M.removed),
		grit: /* @__PURE__ */ v(R),
		stage: /* @__PURE__ */ S(rt)
	})
}, U = /* @__PURE__ */ v(P(M.sheetTime)), ot = (e, t) => e === void 0 || t === void 0 || !(Ie(t).si <= Ie(e).si), st = /* @__PURE__ */ T(/* @__PURE__ */ x({
	touch: U,
	recoatFrom: U,
	recoatUntil: U,
	sand: U,
	cured: U
}), /* @__PURE__ */ re(/* @__PURE__ */ c(({ recoatFrom: e, recoatUntil: t }) => ot(e, t), O.windowEndsFirst), ["recoatUntil"])), ct = { "sheet-entered": H("sheet-entered", {
	jar: F,
	temperature: P(M.temperature),
	humidity: P(M.humidity),
	times: st,
	potLife: U,
	totalFilm: /* @__PURE__ */ v(P(M.totalFilm))
}) }, lt = [
	"nitrocellulose",
	"acrylic",
	"cab",
	"shellac",
	"waterborne",
	"precatalysed",
	"conversion",
	"urethane"
], ut = ["grains", "flakes"], dt = [
	"isocyanate",
	"acid",
	"oil",
	"aerosol"
], ft = ["pot", "shelf"], pt = ["evaporated", "used"], mt = .005, ht = (e) => Math.abs(e.reduce((e, { share: t }) => e + t, 0) - 1) <= mt, gt = (e) => new Set(e.map(({ solvent: e }) => e)).size === e.length, _t = /* @__PURE__ */ T(/* @__PURE__ */ g(/* @__PURE__ */ x({
	solvent: z,
	share: We
})), /* @__PURE__ */ p(N.blendParts.lowest, O.emptyBlend), /* @__PURE__ */ d(N.blendParts.highest, O.longBlend(N.blendParts.highest)), /* @__PURE__ */ c((e) => gt(e), O.solventTwice), /* @__PURE__ */ c((e) => ht(e), O.sharesDoNotAddUp)), vt = /* @__PURE__ */ y("lacquer"), yt = /* @__PURE__ */ y("mix"), bt = /* @__PURE__ */ w("of", [/* @__PURE__ */ x({
	of: vt,
	percent: P(M.thinningOfLacquer)
}), /* @__PURE__ */ x({
	of: yt,
	percent: P(M.thinningOfMix)
})]), xt = /* @__PURE__ */ w("of", [/* @__PURE__ */ x({
	of: vt,
	solvent: z,
	percent: P(M.retarderOfLacquer)
}), /* @__PURE__ */ x({
	of: yt,
	solvent: z,
	percent: P(M.retarderOfMix)
})]), St = /* @__PURE__ */ x({
	shareOfSolids: P(M.pigmentOfSolids),
	shape: /* @__PURE__ */ S(ut),
	aspect: /* @__PURE__ */ v(P(M.flakeAspect))
}), Ct = /* @__PURE__ */ x({
	finish: /* @__PURE__ */ S(lt),
	volumeSolids: P(M.volumeSolids),
	solvents: /* @__PURE__ */ v(_t)
}), wt = /* @__PURE__ */ x({
	span: P(M.life),
	as: /* @__PURE__ */ S(ft)
}), Tt = /* @__PURE__ */ x({
	jar: F,
	volume: P(M.volume)
}), Et = {
	"jar-filled": H("jar-filled", {
		jar: F,
		name: L,
		product: Ct,
		thinner: /* @__PURE__ */ x({
			name: L,
			blend: _t
		}),
		thinning: bt,
		retarder: /* @__PURE__ */ v(xt),
		pigment: /* @__PURE__ */ v(St),
		amount: /* @__PURE__ */ v(P(M.volume)),
		density: /* @__PURE__ */ v(P(M.density)),
		life: /* @__PURE__ */ v(wt),
		keepBack: /* @__PURE__ */ v(P(M.keepBack)),
		contains: /* @__PURE__ */ v(/* @__PURE__ */ g(/* @__PURE__ */ S(dt))),
		weighUp: /* @__PURE__ */ v(F),
		boxedFrom: /* @__PURE__ */ v(/* @__PURE__ */ g(Tt)),
		note: /* @__PURE__ */ v(R)
	}),
	"jar-weighed": H("jar-weighed", {
		jar: F,
		mass: P(M.mass),
		missing: /* @__PURE__ */ S(pt)
	}),
	"jar-drawn": H("jar-drawn", {
		jar: F,
		volume: P(M.volume),
		note: /* @__PURE__ */ v(R)
	}),
	"jar-emptied": H("jar-emptied", { jar: F })
}, Dt = [
	"clear",
	"white-base",
	"tinter",
	"dye",
	"flatting",
	"let-down",
	"thinner",
	"retarder"
], Ot = [
	"weak",
	"medium",
	"strong"
], kt = /* @__PURE__ */ S([
	"data-sheet",
	"measured",
	"usual"
]), W = (e) => /* @__PURE__ */ v(/* @__PURE__ */ x({
	value: e,
	from: kt
})), At = /* @__PURE__ */ T(/* @__PURE__ */ g(/* @__PURE__ */ x({
	ingredient: F,
	massFraction: We
})), /* @__PURE__ */ p(1, O.empty), /* @__PURE__ */ d(N.recipeLines.highest, O.longRecipe(N.recipeLines.highest))), jt = {
	"ingredient-described": H("ingredient-described", {
		ingredient: F,
		name: L,
		is: /* @__PURE__ */ S(Dt),
		finish: /* @__PURE__ */ v(/* @__PURE__ */ S(lt)),
		density: W(P(M.density)),
		dropMass: W(P(M.dropMass)),
		volumeSolids: W(P(M.solids)),
		weightSolids: W(P(M.solids)),
		pigmentOfSolids: W(P(M.pigment)),
		criticalPigment: W(P(M.critical)),
		pigmentShape: /* @__PURE__ */ v(/* @__PURE__ */ S(ut)),
		solvents: W(_t),
		strength: /* @__PURE__ */ v(/* @__PURE__ */ S(Ot)),
		contains: /* @__PURE__ */ v(/* @__PURE__ */ g(/* @__PURE__ */ S(dt))),
		madeOf: /* @__PURE__ */ v(At),
		source: /* @__PURE__ */ v(R),
		lot: /* @__PURE__ */ v(R),
		opened: /* @__PURE__ */ v(Ge),
		useBy: /* @__PURE__ */ v(Ge),
		note: /* @__PURE__ */ v(R)
	}),
	"ingredient-put-away": H("ingredient-put-away", { ingredient: F })
}, Mt = {
	"A/2": [
		109.85,
		100,
		35.585
	],
	"C/2": [
		98.074,
		100,
		118.232
	],
	"D50/2": [
		96.422,
		100,
		82.521
	],
	"D55/2": [
		95.682,
		100,
		92.149
	],
	"D65/2": [
		95.047,
		100,
		108.883
	],
	"D75/2": [
		94.972,
		100,
		122.638
	],
	"F2/2": [
		99.186,
		100,
		67.393
	],
	"F7/2": [
		95.041,
		100,
		108.747
	],
	"F11/2": [
		100.962,
		100,
		64.35
	],
	"A/10": [
		111.144,
		100,
		35.2
	],
	"C/10": [
		97.285,
		100,
		116.145
	],
	"D50/10": [
		96.72,
		100,
		81.427
	],
	"D55/10": [
		95.799,
		100,
		90.926
	],
	"D65/10": [
		94.811,
		100,
		107.304
	],
	"D75/10": [
		94.416,
		100,
		120.641
	],
	"F2/10": [
		103.279,
		100,
		69.027
	],
	"F7/10": [
		95.792,
		100,
		107.686
	],
	"F11/10": [
		103.863,
		100,
		65.607
	],
	"LED-B3/2": [
		100.862,
		100,
		67.634
	],
	"LED-B3/10": [
		103.31,
		100,
		67.907
	]
}, Nt = [
	"open-panel",
	"edge",
	"hidden"
], Pt = ["bare", "clear"], Ft = [
	"neat",
	"let-down-10",
	"let-down-1"
], It = [
	"ochre",
	"raw sienna",
	"raw umber",
	"burnt umber",
	"black",
	"red oxide",
	"green oxide"
], Lt = /* @__PURE__ */ S(Object.keys(Mt)), Rt = /* @__PURE__ */ x({
	ingredient: F,
	like: /* @__PURE__ */ v(/* @__PURE__ */ S(It))
}), zt = (e) => new Set(e.map(({ ingredient: e }) => e)).size === e.length, Bt = /* @__PURE__ */ x({
	ingredient: F,
	form: /* @__PURE__ */ S(Ft),
	mass: P(M.mass)
}), Vt = {
	"match-described": H("match-described", {
		match: F,
		name: L,
		piece: /* @__PURE__ */ v(F),
		place: /* @__PURE__ */ S(Nt),
		tolerance: /* @__PURE__ */ v(P(M.tolerance)),
		through: /* @__PURE__ */ S(Pt),
		white: Lt,
		base: F,
		tinters: /* @__PURE__ */ T(/* @__PURE__ */ g(Rt), /* @__PURE__ */ d(N.tinters.highest, O.longTinters(N.tinters.highest)), /* @__PURE__ */ c((e) => zt(e), O.tinterTwice)),
		division: P(M.division),
		letDowns: /* @__PURE__ */ g(/* @__PURE__ */ S(["let-down-10", "let-down-1"])),
		clear: /* @__PURE__ */ v(F),
		jarHolds: /* @__PURE__ */ v(P(M.mass)),
		yellowing: /* @__PURE__ */ v(P(M.yellowing)),
		note: /* @__PURE__ */ v(R)
	}),
	"match-put-away": H("match-put-away", { match: F }),
	"trial-mixed": H("trial-mixed", {
		match: F,
		trial: F,
		added: /* @__PURE__ */ T(/* @__PURE__ */ g(Bt), /* @__PURE__ */ d(N.recipeLines.highest, O.longRecipe(N.recipeLines.highest))),
		note: /* @__PURE__ */ v(R)
	}),
	"trial-accepted": H("trial-accepted", {
		match: F,
		trial: F,
		recipe: F
	})
}, Ht = /* @__PURE__ */ S([
	"bare-wood",
	"sealed",
	"old-redissolves",
	"old-closed"
]), Ut = P(M.oldFilm), Wt = P(M.area), Gt = {
	"piece-started": H("piece-started", {
		piece: F,
		name: L,
		base: Ht,
		oldFilm: /* @__PURE__ */ v(Ut),
		area: /* @__PURE__ */ v(Wt),
		note: /* @__PURE__ */ v(R)
	}),
	"piece-changed": H("piece-changed", {
		piece: F,
		name: /* @__PURE__ */ v(L),
		base: /* @__PURE__ */ v(Ht),
		oldFilm: /* @__PURE__ */ v(Ut),
		area: /* @__PURE__ */ v(Wt),
		note: /* @__PURE__ */ v(R)
	}),
	"piece-closed": H("piece-closed", { piece: F })
}, Kt = [
	"melt-in",
	"opaque-touch-up",
	"full-clear",
	"toner",
	"waterborne",
	"shellac",
	"catalysed"
], qt = [
	"clean",
	"scuff",
	"flash-coat",
	"coat",
	"toner-coat",
	"opaque-coat",
	"seal",
	"drop-fill",
	"pad",
	"level-sand",
	"rub-out",
	"other"
], Jt = [
	"flash-off",
	"recoat",
	"shrink-back",
	"level-sand",
	"rub-out",
	"cure",
	"rest"
], Yt = [
	"no-print",
	"powders",
	"sink",
	"colour",
	"look-over"
], Xt = [
	"blush",
	"damp",
	"cold"
], Zt = ["bench", "booth"], Qt = ["spraying", "everything"], $t = ["done", "not-passed"], G = V(N.planMinutes), en = /* @__PURE__ */ T(/* @__PURE__ */ x({
	earliest: G,
	likely: G,
	late: G
}), /* @__PURE__ */ c(({ earliest: e, likely: t, late: n }) => e <= t && t <= n, O.bandOutOfOrder)), tn = /* @__PURE__ */ w("kind", [
	/* @__PURE__ */ x({
		kind: /* @__PURE__ */ y("work"),
		id: F,
		task: /* @__PURE__ */ S(qt),
		place: /* @__PURE__ */ S(Zt),
		minutes: G,
		moveMinutes: /* @__PURE__ */ v(G),
		isCoat: /* @__PURE__ */ v(/* @__PURE__ */ _()),
		notBefore: /* @__PURE__ */ v(I)
	}),
	/* @__PURE__ */ x({
		kind: /* @__PURE__ */ y("wait"),
		id: F,
		until: /* @__PURE__ */ S(Jt),
		minutes: en,
		isOwn: /* @__PURE__ */ v(/* @__PURE__ */ _())
	}),
	/* @__PURE__ */ x({
		kind: /* @__PURE__ */ y("gate"),
		id: F,
		check: /* @__PURE__ */ S(Yt),
		minutes: G,
		againAfterMinutes: G,
		mostFailures: V(N.tries)
	}),
	/* @__PURE__ */ x({
		kind: /* @__PURE__ */ y("window"),
		id: F,
		fromMinutes: G,
		untilMinutes: G,
		scuffMinutes: G
	}),
	/* @__PURE__ */ x({
		kind: /* @__PURE__ */ y("hold"),
		id: F,
		against: /* @__PURE__ */ S(Xt)
	})
]), K = /* @__PURE__ */ x({
	open: B,
	close: B
}), nn = /* @__PURE__ */ x({
	work: /* @__PURE__ */ g(K),
	booth: /* @__PURE__ */ v(/* @__PURE__ */ g(K))
}), rn = 7, an = /* @__PURE__ */ T(/* @__PURE__ */ x({
	from: I,
	to: I
}), /* @__PURE__ */ re(/* @__PURE__ */ c(({ from: e, to: t }) => e < t, O.endsFirst), ["to"])), on = {
	"piece-planned": H("piece-planned", {
		piece: F,
		job: /* @__PURE__ */ v(/* @__PURE__ */ S(Kt)),
		coatsADay: V(N.coatsADay),
		steps: /* @__PURE__ */ T(/* @__PURE__ */ g(tn), /* @__PURE__ */ d(N.planSteps.highest, O.tooManySteps)),
		since: /* @__PURE__ */ v(I)
	}),
	"piece-promised": H("piece-promised", {
		piece: F,
		promised: /* @__PURE__ */ v(I)
	}),
	"step-marked": H("step-marked", {
		piece: F,
		step: F,
		as: /* @__PURE__ */ S($t)
	}),
	"hours-set": H("hours-set", {
		week: /* @__PURE__ */ T(/* @__PURE__ */ g(nn), /* @__PURE__ */ u(rn)),
		quiet: /* @__PURE__ */ v(K)
	}),
	"closure-set": H("closure-set", {
		closure: F,
		span: an,
		closes: /* @__PURE__ */ S(Qt)
	}),
	"closure-lifted": H("closure-lifted", { closure: F })
}, sn = {
	"weigh-up-begun": H("weigh-up-begun", {
		weighUp: F,
		recipe: F,
		plan: /* @__PURE__ */ T(/* @__PURE__ */ g(/* @__PURE__ */ x({
			ingredient: F,
			massKg: /* @__PURE__ */ T(/* @__PURE__ */ b(), /* @__PURE__ */ c((e) => e > 0 && e <= 200, O.notAMass))
		})), /* @__PURE__ */ p(N.recipeLines.lowest, O.emptyRecipe), /* @__PURE__ */ d(N.recipeLines.highest, O.longRecipe(N.recipeLines.highest))),
		division: P(M.division),
		isTared: /* @__PURE__ */ _()
	}),
	poured: H("poured", {
		weighUp: F,
		line: V({
			lowest: 0,
			highest: N.recipeLines.highest - 1
		}),
		scale: P(M.mass)
	}),
	"weigh-up-dropped": H("weigh-up-dropped", { weighUp: F })
}, cn = /* @__PURE__ */ w("as", [
	/* @__PURE__ */ x({ as: /* @__PURE__ */ y("target") }),
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("trial"),
		trial: F
	}),
	/* @__PURE__ */ x({ as: /* @__PURE__ */ y("card") }),
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("tint"),
		tinter: F,
		share: P(M.tintShare)
	}),
	/* @__PURE__ */ x({ as: /* @__PURE__ */ y("ground") }),
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("toned"),
		passes: V(N.passes)
	})
]), q = /* @__PURE__ */ T(/* @__PURE__ */ b(), /* @__PURE__ */ l()), ln = /* @__PURE__ */ T(q, /* @__PURE__ */ m(0), /* @__PURE__ */ f(100)), un = /* @__PURE__ */ T(q, /* @__PURE__ */ m(-128), /* @__PURE__ */ f(128)), dn = /* @__PURE__ */ w("as", [
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("lab"),
		L: P(M.lightness),
		a: P(M.opponent),
		b: P(M.opponent)
	}),
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("xyz"),
		X: P(M.tristimulus),
		Y: P(M.luminance),
		Z: P(M.tristimulus)
	}),
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("hex"),
		hex: /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ h(/^#?([0-9a-f]{3}|[0-9a-f]{6})$/i, O.notAHex))
	}),
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("spectrum"),
		startNm: q,
		stepNm: /* @__PURE__ */ T(q, /* @__PURE__ */ m(1)),
		reflectance: /* @__PURE__ */ T(/* @__PURE__ */ g(q), /* @__PURE__ */ p(2), /* @__PURE__ */ d(N.bands.highest))
	}),
	/* @__PURE__ */ x({
		as: /* @__PURE__ */ y("photo"),
		against: /* @__PURE__ */ S(["chart", "grey-card"]),
		L: ln,
		a: un,
		b: un,
		spread: /* @__PURE__ */ T(q, /* @__PURE__ */ m(0))
	})
]), fn = P(M.luminance), pn = /* @__PURE__ */ x({
	card: fn,
	coated: fn
}), mn = {
	"colour-read": H("colour-read", {
		match: F,
		of: cn,
		white: Lt,
		isDry: /* @__PURE__ */ _(),
		clearCoats: /* @__PURE__ */ v(V(N.coats)),
		readings: /* @__PURE__ */ T(/* @__PURE__ */ g(dn), /* @__PURE__ */ p(1, O.noReading), /* @__PURE__ */ d(N.readings.highest, O.longReadings(N.readings.highest))),
		note: /* @__PURE__ */ v(R)
	}),
	"hiding-read": H("hiding-read", {
		match: F,
		trial: /* @__PURE__ */ v(F),
		dryFilm: P(M.dryFilm),
		in: /* @__PURE__ */ S(["Y", "L"]),
		black: pn,
		white: pn
	})
}, hn = [
	"g",
	"mL",
	"drops",
	"parts",
	"%",
	"fl-oz-us",
	"fl-oz-imperial"
], gn = [
	"white",
	"old-colour",
	"bare-wood",
	"dark"
], _n = 1e6, vn = /* @__PURE__ */ T(/* @__PURE__ */ x({
	ingredient: F,
	amount: /* @__PURE__ */ x({
		text: /* @__PURE__ */ T(/* @__PURE__ */ C(), /* @__PURE__ */ c((e) => {
			let t = Pe(e);
			return t !== void 0 && t > 0 && t <= _n;
		}, O.notAnAmount)),
		unit: /* @__PURE__ */ S(hn)
	}),
	by: /* @__PURE__ */ v(/* @__PURE__ */ S(["mass", "volume"])),
	of: /* @__PURE__ */ v(/* @__PURE__ */ S(["lacquer", "mix"]))
}), /* @__PURE__ */ c(({ amount: e, of: t }) => e.unit !== "%" || t !== void 0, O.percentOfWhat), /* @__PURE__ */ c(({ amount: e, by: t }) => e.unit !== "%" && e.unit !== "parts" || t !== void 0, O.byMassOrVolume)), yn = /* @__PURE__ */ v(V(N.coats)), bn = {
	"recipe-written": H("recipe-written", {
		recipe: F,
		name: L,
		use: /* @__PURE__ */ w("as", [
			/* @__PURE__ */ x({ as: /* @__PURE__ */ y("clear") }),
			/* @__PURE__ */ x({
				as: /* @__PURE__ */ y("opaque"),
				over: /* @__PURE__ */ S(gn),
				coatsToHide: yn
			}),
			/* @__PURE__ */ x({
				as: /* @__PURE__ */ y("dye-toner"),
				passes: yn
			}),
			/* @__PURE__ */ x({
				as: /* @__PURE__ */ y("shading"),
				where: R,
				passes: yn
			})
		]),
		lines: /* @__PURE__ */ T(/* @__PURE__ */ g(vn), /* @__PURE__ */ p(N.recipeLines.lowest, O.emptyRecipe), /* @__PURE__ */ d(N.recipeLines.highest, O.longRecipe(N.recipeLines.highest))),
		previous: /* @__PURE__ */ v(F),
		note: /* @__PURE__ */ v(R)
	}),
	"recipe-put-away": H("recipe-put-away", { recipe: F }),
	"card-photographed": H("card-photographed", {
		recipe: F,
		photo: F
	})
}, xn = [
	"next-coat",
	"window-closing",
	"stop-for-today",
	"check-blush",
	"move-piece",
	"next-drop",
	"scuff",
	"rest-day",
	"level-sand",
	"rub-out",
	"sink-check",
	"jar-end",
	"cartridge",
	"rags",
	"customer-update"
], Sn = ["rags"], Cn = (e) => Sn.some((t) => t === e), wn = xn.filter((e) => !Cn(e)), Tn = {
	"reminder-answered": H("reminder-answered", {
		reminder: L,
		answer: /* @__PURE__ */ S(["done", "later"])
	}),
	"reminders-set": H("reminders-set", {
		off: /* @__PURE__ */ g(/* @__PURE__ */ S(wn)),
		quiet: /* @__PURE__ */ v(K)
	})
}, En = {
	"room-described": H("room-described", {
		volume: P(M.roomVolume),
		airFlow: P(M.airFlow),
		flowFrom: /* @__PURE__ */ S(["measured", "rated"]),
		mixing: P(M.mixingFactor),
		explosiveLimit: /* @__PURE__ */ v(P(M.explosiveLimit))
	}),
	"spraying-ended": H("spraying-ended", {
		lasted: P(M.sprayTime),
		filters: /* @__PURE__ */ g(F)
	})
}, Dn = { "settings-changed": H("settings-changed", { patch: /* @__PURE__ */ x({
	units: /* @__PURE__ */ v(/* @__PURE__ */ S(["metric", "us"])),
	altitude: /* @__PURE__ */ v(P(M.altitude)),
	sandingTemperature: /* @__PURE__ */ v(P(M.temperature))
}) }) }, On = {
	"spot-tested": H("spot-tested", {
		piece: F,
		solvent: /* @__PURE__ */ S([
			"water",
			"naphtha",
			"ethanol",
			"xylene",
			"lacquer-thinner",
			"acetone"
		]),
		dwell: P(M.dwell),
		reading: /* @__PURE__ */ S([
			"nothing",
			"dulls",
			"softens",
			"dissolves",
			"wrinkles"
		])
	}),
	"old-finish-seen": H("old-finish-seen", {
		piece: F,
		opaque: /* @__PURE__ */ _(),
		signs: /* @__PURE__ */ g(/* @__PURE__ */ S([
			"polish",
			"crazed",
			"drying-agents",
			"oily-smell"
		]))
	}),
	"lead-tested": H("lead-tested", {
		piece: F,
		finding: /* @__PURE__ */ S([
			"none-found",
			"found",
			"treat-as-lead"
		])
	})
}, kn = { struck: H("struck", { entry: F }) }, An = {
	...Gt,
	...Et,
	...jt,
	...bn,
	...sn,
	...Vt,
	...mn,
	...Je,
	...En,
	...Ye,
	...et,
	...On,
	...ct,
	...at,
	...tt,
	...on,
	...Tn,
	...Dn,
	...kn
}, jn = xe * 1e3, Mn = (e) => typeof e == "string" && Object.hasOwn(An, e);
function Nn(e, t) {
	if (typeof e != "object" || !e) return J("", O.notAnEntry);
	let { kind: n, v: r } = e;
	if (!Mn(n)) return J("kind", O.unknownKind);
	if (typeof r == "number" && r > 1) return J("v", O.newerVersion);
	let i = /* @__PURE__ */ oe(An[n], e, {
		message: Ln,
		abortPipeEarly: !0
	});
	return i.success ? Date.parse(i.output.at) > t + jn ? J("at", O.inTheFuture) : E(i.output) : D(i.issues.map(In));
}
var Pn = (e) => /* @__PURE__ */ ae(F, e), Fn = (e) => {
	if (typeof e != "object" || !e) return !1;
	let { id: t, kind: n, v: r } = e;
	return typeof n == "string" && (!Mn(n) || typeof r == "number" && r > 1) && Pn(t);
}, J = (e, t) => D([{
	path: e,
	problem: t
}]), In = (e) => ({
	path: /* @__PURE__ */ s(e) ?? "",
	problem: e.message
}), Ln = ({ expected: e, input: t }) => t === void 0 ? O.missing : O.expected(e ?? ""), Rn = "coatwait-logbook", zn = 2, Bn = [
	"image/jpeg",
	"image/png",
	"image/webp"
], Vn = 2e8, Hn = 20;
async function Un({ entries: e, setAside: t }, n, r = []) {
	let i = t.map(({ key: e, raw: t }) => ({
		key: e,
		raw: Xn(t)
	}));
	return JSON.stringify({
		format: Rn,
		version: zn,
		writtenAt: new Date(n).toISOString(),
		sha256: await Zn([
			e,
			i,
			r
		]),
		entries: e,
		setAside: i,
		photos: r
	});
}
async function Wn(e, t) {
	if (e.length > Vn) return D({ kind: "too-large" });
	let n = Gn(e);
	if (!n.ok) return n;
	let { entries: r, setAside: i, photos: a, sha256: o } = n.value;
	return await Zn(a ? [
		r,
		i,
		a
	] : [r, i]).catch(() => "") === o ? Kn(n.value, t) : D({ kind: "damaged" });
}
function Gn(e) {
	let t;
	try {
		t = JSON.parse(e);
	} catch {
		return D({ kind: "not-json" });
	}
	if (!Yn(t) || t.format !== Rn) return D({ kind: "not-a-backup" });
	let { version: n, entries: r, setAside: i, photos: a, sha256: o } = t;
	return typeof n == "number" && n > zn ? D({
		kind: "newer-backup",
		version: n
	}) : !Array.isArray(r) || !Array.isArray(i) || typeof o != "string" || n !== 1 && !Array.isArray(a) ? D({ kind: "not-a-backup" }) : E({
		entries: r,
		setAside: i,
		photos: Array.isArray(a) ? a : void 0,
		sha256: o
	});
}
function Kn({ entries: e, setAside: t, photos: n = [] }, r) {
	let i = [], a = [], o = [], s = (e, t) => {
		let n = Nn(e, r);
		n.ok ? i.push(n.value) : Fn(e) ? a.push({
			key: e.id,
			issues: n.failure,
			raw: e
		}) : o.push(...n.failure.map((e) => ({
			...e,
			path: `${t}.${e.path}`
		})));
	}, c = ({ key: e, raw: t }) => {
		let n = Nn(t, r);
		n.ok ? i.push(n.value) : a.push({
			key: e,
			issues: n.failure,
			raw: t
		});
	};
	for (let [t, n] of e.entries()) s(n, `entries.${t}`);
	if (o.length > 0) return D({
		kind: "faulty-entries",
		issues: o.slice(0, Hn)
	});
	for (let e of t) qn(e) && c(e);
	return E({
		entries: i,
		setAside: a,
		photos: n.filter(Jn)
	});
}
var qn = (e) => Yn(e) && Pn(e.key), Jn = (e) => Yn(e) && Pn(e.id) && typeof e.sha256 == "string" && Bn.some((t) => t === e.type), Yn = (e) => typeof e == "object" && !!e && !Array.isArray(e);
function Xn(e) {
	try {
		return JSON.parse(JSON.stringify(e));
	} catch {
		return String(e);
	}
}
async function Zn(e) {
	return Qn(new TextEncoder().encode(JSON.stringify(e)));
}
async function Qn(e) {
	let t = new Uint8Array(await crypto.subtle.digest("SHA-256", e));
	return Array.from(t, (e) => e.toString(16).padStart(2, "0")).join("");
}
// src/logbook/crc32.ts
var $n = 3988292384, er = Uint32Array.from({ length: 256 }, (e, t) => {
	let n = t;
	for (let e = 0; e < 8; e++) n = n & 1 ? $n ^ n >>> 1 : n >>> 1;
	return n;
});
function tr(e) {
	let t = 4294967295;
	for (let n of e) t = er[(t ^ n) & 255] ^ t >>> 8;
	return (t ^ 4294967295) >>> 0;
}
// src/logbook/zip.ts
var nr = 67324752, rr = 33639248, ir = 101010256, Y = 30, X = 46, ar = 22, or = 65535, sr = 10, cr = 2048, lr = 4294967295, ur = 65534, dr = 2e7;
async function fr(e) {
	let t = [], n = [], r = 0;
	for (let { name: i, content: a } of e) {
		let e = tr(new Uint8Array(await a.arrayBuffer())), o = {
			name: new TextEncoder().encode(i),
			crc: e,
			bytes: a.size,
			offset: r
		};
		t.push(mr(o), o.name, a), n.push(o), r += Y + o.name.length + a.size;
	}
	let i = n.flatMap((e) => [hr(e), e.name]), a = i.reduce((e, t) => e + t.length, 0);
	if (r + a > lr || e.length > ur) throw RangeError("too large for a ZIP");
	return new Blob([
		...t,
		...i,
		gr(e.length, a, r)
	], { type: "application/zip" });
}
function pr(e, t, { name: n, crc: r, bytes: i }) {
	e.setUint16(t, sr, !0), e.setUint16(t + 2, cr, !0), e.setUint16(t + 8, 33, !0), e.setUint32(t + 10, r, !0), e.setUint32(t + 14, i, !0), e.setUint32(t + 18, i, !0), e.setUint16(t + 22, n.length, !0);
}
function mr(e) {
	let t = /* @__PURE__ */ new DataView(/* @__PURE__ */ new ArrayBuffer(Y));
	return t.setUint32(0, nr, !0), pr(t, 4, e), new Uint8Array(t.buffer);
}
function hr(e) {
	let t = /* @__PURE__ */ new DataView(/* @__PURE__ */ new ArrayBuffer(X));
	return t.setUint32(0, rr, !0), t.setUint16(4, sr, !0), pr(t, 6, e), t.setUint32(42, e.offset, !0), new Uint8Array(t.buffer);
}
function gr(e, t, n) {
	let r = /* @__PURE__ */ new DataView(/* @__PURE__ */ new ArrayBuffer(ar));
	return r.setUint32(0, ir, !0), r.setUint16(8, e, !0), r.setUint16(10, e, !0), r.setUint32(12, t, !0), r.setUint32(16, n, !0), new Uint8Array(r.buffer);
}
async function _r(e) {
	let t = await vr(e);
	if (!t || t.offset + t.size > e.size || t.size > dr) return D("not-a-zip");
	let n = await br(e, t.offset, t.size), r = /* @__PURE__ */ new Map(), i = 0;
	for (let a = 0; a < t.files; a++) {
		if (i + X > n.byteLength || n.getUint32(i, !0) !== rr) return D("not-a-zip");
		if (n.getUint16(i + 10, !0) !== 0) return D("packed");
		let [t, a, o] = [
			28,
			30,
			32
		].map((e) => n.getUint16(i + e, !0)), s = n.getUint32(i + 24, !0), c = i + X + (t ?? 0) + (a ?? 0) + (o ?? 0);
		if (c > n.byteLength) return D("not-a-zip");
		let l = await yr(e, n.getUint32(i + 42, !0), s);
		if (!l) return D("not-a-zip");
		r.set(new TextDecoder().decode(n.buffer.slice(i + X, i + X + (t ?? 0))), l), i = c;
	}
	return E(r);
}
async function vr(e) {
	let t = Math.max(0, e.size - ar - or), n = await br(e, t, e.size - t);
	for (let e = n.byteLength - ar; e >= 0; e--) if (n.getUint32(e, !0) === ir) return {
		files: n.getUint16(e + 10, !0),
		size: n.getUint32(e + 12, !0),
		offset: n.getUint32(e + 16, !0)
	};
}
async function yr(e, t, n) {
	let r = await br(e, t, Y);
	if (r.byteLength < Y || r.getUint32(0, !0) !== nr) return;
	let i = t + Y + r.getUint16(26, !0) + r.getUint16(28, !0);
	return i + n <= e.size ? e.slice(i, i + n) : void 0;
}
var br = async (e, t, n) => new DataView(await e.slice(t, t + n).arrayBuffer()), xr = "logbook.json", Sr = "application/json", Cr = 4e8, wr = 5e7, Tr = 1347093252, Er = (e) => `photos/${e}`;
async function Dr(e, t, n) {
	let r = [], i = [];
	for (let { id: e, picture: n } of t) {
		let t = await n.arrayBuffer().catch(() => void 0);
		t && (r.push({
			id: e,
			type: n.type,
			sha256: await Qn(t)
		}), i.push({
			name: Er(e),
			content: n
		}));
	}
	return fr([{
		name: xr,
		content: new Blob([await Un(e, n, r)], { type: Sr })
	}, ...i]);
}
var Or = (e, t) => kr(e, t).catch(() => D({ kind: "unreadable" }));
async function kr(e, t) {
	let n = await Ar(e);
	if (!n.ok) return n;
	let r = n.value.get(xr);
	if (!r) return D({ kind: "not-a-backup" });
	if (r.size > Cr) return D({ kind: "too-large" });
	let i = await Wn(await r.text(), t);
	if (!i.ok) return i;
	let a = [];
	for (let e of i.value.photos) {
		let t = n.value.get(Er(e.id));
		if (!t || t.size > wr || await Qn(await t.arrayBuffer()) !== e.sha256) return D({ kind: "damaged" });
		a.push({
			id: e.id,
			picture: t.slice(0, t.size, e.type)
		});
	}
	return E({
		...i.value,
		photos: a
	});
}
async function Ar(e) {
	let t = new DataView(await e.slice(0, 4).arrayBuffer());
	if (t.byteLength < 4 || t.getUint32(0) !== Tr) return E(/* @__PURE__ */ new Map([[xr, e]]));
	let n = await _r(e);
	return n.ok ? n : D({ kind: n.failure === "packed" ? "packed" : "damaged" });
}
// src/logbook/fold/air.ts
var jr = (e) => ({
	airReadings: e.of("air-read"),
	forecast: e.of("forecast-set").at(-1)
});
// src/logbook/fold/cautions.ts
function Mr(e) {
	let t = /* @__PURE__ */ new Set();
	for (let n of e.of("caution-silenced")) n.silenced ? t.add(n.caution) : t.delete(n.caution);
	return {
		cautionsRead: e.of("cautions-read"),
		silencedCautions: t
	};
}
// src/logbook/fold/data-sheets.ts
function Nr(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e.of("sheet-entered")) t.set(n.jar, n);
	return { sheets: t };
}
// src/logbook/fold/ingredients.ts
function Pr(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e.of("ingredient-described")) t.set(n.ingredient, Fr(n, t.get(n.ingredient)));
	for (let { ingredient: n, atMs: r } of e.of("ingredient-put-away")) {
		let e = t.get(n);
		e && e.describedMs <= r && t.set(n, {
			...e,
			putAwayMs: r
		});
	}
	return { ingredients: t };
}
function Fr(e, t) {
	let { ingredient: n, atMs: r, id: i, v: a, kind: o, at: s, zone: c, ...l } = e, u = t?.lotChangesMs ?? [], d = t?.lot !== void 0 && e.lot !== void 0 && e.lot !== t.lot ? [...u, r] : u;
	return {
		...l,
		id: n,
		describedMs: r,
		lotChangesMs: d,
		putAwayMs: void 0
	};
}
// src/logbook/fold/jars.ts
function Ir(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e.of("jar-filled")) t.has(n.jar) || t.set(n.jar, Lr(n));
	for (let { jar: n, atMs: r, boxedFrom: i = [] } of e.of("jar-filled")) for (let { jar: e, volume: a } of i) t.get(e)?.drawings.push({
		atMs: r,
		volumeM3: a.si,
		into: n
	});
	for (let { jar: n, atMs: r, volume: i } of e.of("jar-drawn")) t.get(n)?.drawings.push({
		atMs: r,
		volumeM3: i.si
	});
	for (let n of e.of("jar-weighed")) t.get(n.jar)?.weighings.push(n);
	for (let { jar: n, atMs: r } of e.of("jar-emptied")) Object.assign(t.get(n) ?? {}, { emptiedMs: r });
	return { jars: t };
}
function Lr({ jar: e, atMs: t, id: n, v: r, kind: i, at: a, zone: o, ...s }) {
	return {
		...s,
		id: e,
		entry: n,
		filledMs: t,
		emptiedMs: void 0,
		drawings: [],
		weighings: []
	};
}
// src/logbook/group-by.ts
function Rr(e, t) {
	let n = /* @__PURE__ */ new Map();
	for (let r of e) {
		let e = t(r), i = n.get(e);
		i ? i.push(r) : n.set(e, [r]);
	}
	return n;
}
// src/logbook/order.ts
function Z(e, t) {
	return e.at === t.at ? e.id === t.id ? 0 : e.id < t.id ? -1 : 1 : e.at < t.at ? -1 : 1;
}
// src/logbook/union.ts
function zr(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e) {
		let e = t.get(n.id);
		(!e || e !== n && JSON.stringify(n) < JSON.stringify(e)) && t.set(n.id, n);
	}
	return t;
}
// src/logbook/fold/strikes.ts
function Br(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e) n.kind === "struck" && t.set(n.id, n);
	let n = Vr(t), r = /* @__PURE__ */ new Set(), i = [...t.values()].filter(({ id: e }) => !n.has(e)), a = (e) => {
		let n = t.get(e);
		n && i.push(n);
	};
	for (let e = i.pop(); e; e = i.pop()) {
		let t = e.entry;
		r.has(t) || (r.has(e.id) ? Hr(n, t) && a(t) : (r.add(t), a(t)));
	}
	return r;
}
function Vr(e) {
	let t = /* @__PURE__ */ new Map();
	for (let { entry: n } of e.values()) e.has(n) && t.set(n, (t.get(n) ?? 0) + 1);
	return t;
}
function Hr(e, t) {
	let n = (e.get(t) ?? 0) - 1;
	return e.set(t, n), n === 0;
}
// src/logbook/fold/time-line.ts
var Ur = 100;
function Wr(e = Ur) {
	let t = /* @__PURE__ */ new Map(), n, r = [], i = t;
	function a(i) {
		let a = i.slice(0, -e);
		t = new Map(a.map((e) => [e.id, e])), n = a.at(-1), r = i.slice(-e);
	}
	return {
		get entries() {
			return i;
		},
		get last() {
			return r.at(-1);
		},
		add(o) {
			let [s] = o;
			if (!s) return;
			let c = n !== void 0 && Z(n, s) > 0, l = [
				...c ? t.values() : [],
				...r,
				...o
			].sort(Z);
			c || l.length > 2 * e ? a(c ? l : [...t.values(), ...l]) : r = l, i = Gr(t, new Map(r.map((e) => [e.id, e])));
		}
	};
}
function Gr(e, t) {
	if (e.size === 0) return t;
	function* n() {
		yield* e, yield* t;
	}
	function* r() {
		yield* e.keys(), yield* t.keys();
	}
	function* i() {
		yield* e.values(), yield* t.values();
	}
	return {
		size: e.size + t.size,
		get: (n) => t.get(n) ?? e.get(n),
		has: (n) => t.has(n) || e.has(n),
		keys: r,
		values: i,
		entries: n,
		[Symbol.iterator]: n,
		forEach(e) {
			for (let [t, r] of n()) e(r, t, this);
		}
	};
}
// src/logbook/fold/told.ts
var Kr = /* @__PURE__ */ new WeakMap();
function qr(e, t) {
	Kr.delete(t), Kr.set(e, t);
}
var Jr = (e) => Kr.get(e), Yr = /* @__PURE__ */ new WeakMap();
function Xr(e) {
	let t = Yr.get(e);
	if (t) return t;
	let n = Object.assign(Zr(e), { atMs: Date.parse(e.at) });
	return Yr.set(e, n), n;
}
function Zr(e) {
	if (Qr(e)) return Ie(e);
	let t = Array.isArray(e) ? [...e] : { ...e };
	for (let e in t) {
		let n = t[e];
		typeof n == "object" && n && (t[e] = Zr(n));
	}
	return t;
}
var Qr = (e) => "text" in e && "unit" in e, Q = [];
function $r() {
	let e = Wr(), t = /* @__PURE__ */ new Set(), n = /* @__PURE__ */ new Map(), r = /* @__PURE__ */ new Map();
	function i(i) {
		e.add(i), n = ri(n, Rr(i.filter(ni), ({ piece: e }) => e));
		for (let [e, n] of ii(i.filter(({ id: e }) => !t.has(e)))) {
			let t = r.get(e) ?? Q, i = t.concat(n.map(Xr));
			ti(t.at(-1), n) ? i.sort(Z) : qr(i, t), r.set(e, i);
		}
	}
	function a() {
		let n = t, i = [...e.entries.values()];
		t = Br(i);
		let a = [...n, ...t].filter((e) => n.has(e) !== t.has(e)), o = new Set(a.flatMap((t) => e.entries.get(t)?.kind ?? [])), s = ii(i.filter(({ id: e, kind: n }) => o.has(n) && !t.has(e)));
		for (let e of o) r.set(e, s.get(e)?.map(Xr) ?? Q);
	}
	function o(s) {
		let c = ei(s, e.entries);
		if (c.some(({ id: t }) => e.entries.has(t))) {
			let i = [...e.entries.values(), ...c];
			e = Wr(), t = /* @__PURE__ */ new Set(), n = /* @__PURE__ */ new Map(), r.clear(), o(i);
		} else c.length > 0 && (i(c), c.some(({ kind: e }) => e === "struck") && a());
	}
	return {
		get entries() {
			return e.entries;
		},
		get last() {
			return e.last;
		},
		get struck() {
			return t;
		},
		get records() {
			return n;
		},
		lines: { of: (e) => r.get(e) ?? Q },
		add: o
	};
}
function ei(e, t) {
	let n = zr(e);
	return [...zr([...[...n.keys()].flatMap((e) => t.get(e) ?? []), ...n.values()]).values()].filter((e) => t.get(e.id) !== e).sort(Z);
}
var ti = (e, [t]) => e !== void 0 && t !== void 0 && Z(e, t) > 0, ni = (e) => "piece" in e && e.piece !== void 0;
function ri(e, t) {
	if (t.size === 0) return e;
	let n = new Map(e);
	for (let [e, r] of t) {
		let t = n.get(e) ?? Q, i = [...t, ...r];
		n.set(e, ti(t.at(-1), r) ? i.sort(Z) : i);
	}
	return n;
}
var ii = (e) => Rr(e, ({ kind: e }) => e);
// src/logbook/fold/matches.ts
function ai(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e.of("match-described")) {
		let e = t.get(n.match);
		t.set(n.match, ci(n, e ?? si(n)));
	}
	for (let n of e.of("trial-mixed")) {
		let e = t.get(n.match)?.trials;
		e && !e.some(({ id: e }) => e === n.trial) && e.push(li(n, e.length + 1));
	}
	for (let n of e.of("colour-read")) {
		let e = t.get(n.match), { of: r } = n;
		r.as === "trial" ? e?.trials.find(({ id: e }) => e === r.trial)?.readings.push(n) : e?.readings.push(n);
	}
	for (let n of e.of("hiding-read")) t.get(n.match)?.hiding.push(n);
	for (let { match: n, trial: r, recipe: i, atMs: a } of e.of("trial-accepted")) Object.assign(t.get(n) ?? {}, { accepted: {
		trial: r,
		recipe: i,
		atMs: a
	} });
	for (let { match: n, atMs: r } of e.of("match-put-away")) Object.assign(t.get(n) ?? {}, { putAwayMs: r });
	return { matches: t };
}
var oi = {
	accepted: void 0,
	putAwayMs: void 0
}, si = ({ match: e, atMs: t }) => ({
	...oi,
	id: e,
	begunMs: t,
	trials: [],
	readings: [],
	hiding: []
});
function ci(e, t) {
	let { match: n, id: r, v: i, kind: a, at: o, zone: s, atMs: c, ...l } = e, { begunMs: u, trials: d, readings: f, hiding: p, accepted: m, putAwayMs: h } = t;
	return {
		...l,
		id: n,
		begunMs: u,
		trials: d,
		readings: f,
		hiding: p,
		accepted: m,
		putAwayMs: h
	};
}
var li = (e, t) => ({
	id: e.trial,
	entry: e.id,
	number: t,
	mixedMs: e.atMs,
	added: e.added,
	...e.note === void 0 ? {} : { note: e.note },
	readings: []
}), ui = {
	tests: [],
	seen: void 0,
	lead: void 0
};
function di(e) {
	let t = /* @__PURE__ */ new Map(), n = (e, n) => {
		t.set(e, {
			...t.get(e) ?? ui,
			...n
		});
	};
	for (let r of e.of("spot-tested")) n(r.piece, { tests: [...t.get(r.piece)?.tests ?? [], r] });
	for (let t of e.of("old-finish-seen")) n(t.piece, { seen: t });
	for (let t of e.of("lead-tested")) n(t.piece, { lead: t });
	return { oldFinishes: t };
}
// src/logbook/fold/pieces.ts
function fi(e) {
	let t = /* @__PURE__ */ new Map(), n = $(e.of("piece-changed")), r = $(e.of("piece-closed")), i = $(e.of("coat-laid")), a = $(e.of("sanded")), o = $(e.of("checked"));
	for (let s of e.of("piece-started")) {
		let { piece: e } = s;
		if (t.has(e)) continue;
		let c = (t) => t.get(e) ?? hi;
		t.set(e, mi(s, [
			c(n),
			c(r),
			c(i),
			c(a),
			c(o)
		]));
	}
	return {
		pieces: t,
		unplaced: [
			n,
			r,
			i,
			a,
			o
		].flatMap((e) => [...e].flatMap(([e, n]) => t.has(e) ? [] : n.map((e) => e.id)))
	};
}
var pi = /* @__PURE__ */ new WeakMap();
function mi(e, t) {
	let n = pi.get(e);
	if (n && t.every((e, t) => e === n.work[t])) return n.piece;
	let [r, i, a, o, s] = t, c = Object.assign({}, vi(e), ...r.map(vi)), { piece: l, atMs: u } = e, d = {
		...c,
		id: l,
		startedMs: u,
		closedMs: i.at(-1)?.atMs,
		coats: a,
		sandings: o,
		checks: s
	};
	return pi.set(e, {
		work: t,
		piece: d
	}), d;
}
var hi = [], gi = /* @__PURE__ */ new WeakMap();
function $(e) {
	let t = gi.get(e);
	if (t) return t;
	let n = Jr(e), r = n && gi.get(n), i = r ? _i(r, e.slice(n.length)) : Rr(e, ({ piece: e }) => e);
	return gi.set(e, i), i;
}
function _i(e, t) {
	let n = new Map(e);
	for (let e of t) n.set(e.piece, [...n.get(e.piece) ?? hi, e]);
	return n;
}
function vi(e) {
	let { name: t, base: n, oldFilm: r, area: i, note: a } = e, o = Object.entries({
		name: t,
		base: n,
		oldFilm: r,
		area: i,
		note: a
	}).filter(([, e]) => e !== void 0);
	return Object.fromEntries(o);
}
// src/logbook/fold/plans.ts
function yi(e) {
	let t = /* @__PURE__ */ new Map();
	for (let { piece: n, promised: r } of e.of("piece-promised")) r === void 0 ? t.delete(n) : t.set(n, Date.parse(r));
	let n = new Set(e.of("closure-lifted").map(({ closure: e }) => e));
	return {
		plans: new Map(e.of("piece-planned").map((e) => [e.piece, e])),
		promises: t,
		stepMarks: e.of("step-marked"),
		hours: e.of("hours-set").at(-1),
		closures: e.of("closure-set").filter(({ closure: e }) => !n.has(e))
	};
}
// src/logbook/fold/recipes.ts
function bi(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e.of("recipe-written")) {
		if (t.has(n.recipe)) continue;
		let e = n.previous === void 0 ? void 0 : t.get(n.previous);
		e && (e.next = n.recipe), t.set(n.recipe, xi(n, (e?.version ?? 0) + 1));
	}
	for (let { recipe: n, atMs: r } of e.of("recipe-put-away")) Object.assign(t.get(n) ?? {}, { putAwayMs: r });
	for (let { recipe: n, photo: r } of e.of("card-photographed")) t.get(n)?.photos.push(r);
	return { recipes: t };
}
var xi = (e, t) => ({
	id: e.recipe,
	entry: e.id,
	name: e.name,
	use: e.use,
	lines: e.lines,
	...e.previous === void 0 ? {} : { previous: e.previous },
	...e.note === void 0 ? {} : { note: e.note },
	writtenMs: e.atMs,
	next: void 0,
	version: t,
	putAwayMs: void 0,
	photos: []
});
// src/logbook/fold/remember.ts
function Si(e) {
	let t = /* @__PURE__ */ new Map(), n = ({ read: t }) => [...t].every(([t, n]) => e.of(t) === n);
	return (r) => {
		let i = t.get(r);
		if (i && n(i)) return i.folded;
		let a = /* @__PURE__ */ new Map(), o = r({ of(t) {
			let n = e.of(t);
			return a.set(t, n), n;
		} });
		return t.set(r, {
			read: a,
			folded: o
		}), o;
	};
}
// src/logbook/fold/reminders.ts
var Ci = (e) => ({
	reminderAnswers: e.of("reminder-answered"),
	reminderSettings: e.of("reminders-set").at(-1)
}), wi = (e) => ({ settings: Object.assign({}, ...e.of("settings-changed").map(({ patch: e }) => e)) });
// src/logbook/fold/shop-air.ts
function Ti(e) {
	let t = e.of("spraying-ended"), n = /* @__PURE__ */ new Map();
	for (let r of e.of("filter-opened")) n.has(r.filter) || n.set(r.filter, Di(r, Ei(t, r.filter)));
	for (let { filter: t, atMs: r } of e.of("filter-thrown-out")) {
		let e = n.get(t);
		e && n.set(t, {
			...e,
			thrownOutMs: r
		});
	}
	return {
		room: e.of("room-described").at(-1),
		sprayings: t,
		filters: n
	};
}
var Ei = (e, t) => e.filter(({ filters: e }) => e.includes(t)).reduce((e, { lasted: t }) => e + t.si, 0);
function Di(e, t) {
	let { filter: n, part: r, name: i, atMs: a } = e;
	return {
		id: n,
		part: r,
		name: i,
		openedMs: a,
		thrownOutMs: void 0,
		wornS: t,
		...e.wear && { wear: e.wear },
		...e.open && { open: e.open },
		...e.basis !== void 0 && { basis: e.basis }
	};
}
// src/logbook/fold/weigh-ups.ts
function Oi(e) {
	let t = /* @__PURE__ */ new Map();
	for (let n of e.of("weigh-up-begun")) t.has(n.weighUp) || t.set(n.weighUp, ki(n));
	for (let n of e.of("poured")) Ai(t.get(n.weighUp), n);
	for (let { weighUp: n, atMs: r } of e.of("weigh-up-dropped")) Object.assign(t.get(n) ?? {}, { droppedMs: r });
	for (let { weighUp: n, jar: r } of e.of("jar-filled")) n !== void 0 && Object.assign(t.get(n) ?? {}, { jar: r });
	return { weighUps: t };
}
var ki = (e) => ({
	id: e.weighUp,
	recipe: e.recipe,
	plan: e.plan,
	isTared: e.isTared,
	divisionKg: e.division.si,
	begunMs: e.atMs,
	pours: [],
	totalKg: 0,
	jar: void 0,
	droppedMs: void 0
});
function Ai(e, { id: t, line: n, scale: r, atMs: i }) {
	if (!e) return;
	let a = e.isTared ? r.si : Math.max(0, r.si - e.totalKg);
	e.pours.push({
		entry: t,
		line: n,
		massKg: a,
		atMs: i
	}), e.totalKg += a;
}
// src/logbook/fold/fold.ts
var ji = (e) => ({
	...e(fi),
	...e(Ir),
	...e(Pr),
	...e(bi),
	...e(Oi),
	...e(ai),
	...e(jr),
	...e(Ti),
	...e(Mr),
	...e(di),
	...e(Nr),
	...e(yi),
	...e(Ci),
	...e(wi)
});
function Mi() {
	let e = $r(), t = Si(e.lines);
	return (n) => {
		e.add(n);
		let { entries: r, last: i, struck: a, records: o } = e;
		return {
			entries: r,
			last: i,
			struck: a,
			records: o,
			...ji(t)
		};
	};
}
var Ni = (e) => Mi()(e);
export { Ni as fold, Fn as isFromNewerApp, Nn as parseEntry, Wn as readBackup, Or as readBackupFile, Un as writeBackup, Dr as writeBackupFile };
