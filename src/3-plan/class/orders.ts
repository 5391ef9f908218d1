// What a class buys: packs of everything, what is in hand already, what it costs and what is over afterwards.
import type { AdhesivePack, Definition } from "../../1-definition/types.ts";
import type { Model } from "../../2-model/types.ts";
import { addLengths, multiplyLength, noLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { ceilRational, floorRational, rational } from "../../units/rational.ts";
import type { Rational } from "../../units/rational.ts";
import { postsOf } from "../hardware.ts";
import { soldByLength } from "../materials.ts";
import type { Plan } from "../types.ts";
import { listInWords } from "../wording.ts";
import type { Wording } from "../wording.ts";
import type { AdhesiveAmount } from "./adhesive-amounts.ts";
import type { CutPlans } from "./cut-plans.ts";
import { ceilCents, centsOf, printMoney, withMargin } from "./money.ts";
import type { Costs, OrderLine } from "./types.ts";

interface Demand {
  readonly role: string;
  readonly name: string;
  readonly unit: string;
  readonly needed: number;
  readonly inHand: number;
  readonly packSize: number;
  readonly price: Rational | null;
  readonly note: string;
}

/** What the orders are added up from. */
export interface OrderInput {
  readonly definition: Definition;
  readonly model: Model;
  readonly plan: Plan;
  readonly adhesives: readonly AdhesiveAmount[];
  readonly cuts: CutPlans;
  readonly sets: number;
}

/** Every line of the order, sheets first, then lengths, counted pieces and hardware, and the adhesives. */
export function listOrders({ definition, model, plan, adhesives, cuts, sets }: OrderInput, say: Wording): readonly OrderLine[] {
  const planned = new Set([...cuts.sheets, ...cuts.lengths].map((each) => each.role));
  const roles = [...new Set(model.parts.map((part) => part.material))].filter((role) => !planned.has(role));
  return [
    ...cuts.sheets.flatMap(({ role, plan: { layouts } }) => definition.materials[role]!.sheets.flatMap((sheet, index): readonly Demand[] => {
      const needed = layouts.filter((layout) => layout.sheet === `sheet-${index + 1}`).reduce((sum, layout) => sum + layout.times, 0);
      return needed === 0 ? [] : [{ role, name: definition.materials[role]!.name, unit: `sheets ${say.sizes(sheet.height, sheet.width)}`, needed, inHand: sheet.inHand, packSize: sheet.pack, price: sheet.price, note: "" }];
    })),
    ...cuts.lengths.map(({ role, plan: { bars, layouts } }): Demand => {
      const material = definition.materials[role]!;
      return { role, name: material.name, unit: `rolls of ${longLength(material.packLength!, say)}`, needed: bars, inHand: 0, packSize: 1, price: material.price, note: `${longLength(restOf(layouts), say)} left over` };
    }),
    ...roles.map((role) => countedDemand(role, definition, model, sets, say)),
    ...threadDemand(definition, model, sets, say),
    ...postDemand(definition, model, sets, say),
  ].map(orderOf).concat(adhesives.map((amount) => adhesiveLine(amount, definition.class!.packs, plan, say)));
}

function restOf(layouts: CutPlans["lengths"][number]["plan"]["layouts"]): Length {
  return layouts.reduce((sum, { rest, times }) => addLengths(sum, multiplyLength(rest, times)), noLength);
}

/** What is sold on rolls is told in metres or feet where these are exact to a centimetre or a foot. */
function longLength(length: Length, say: Wording): string {
  const centimetres = multiplyLength(length, rational(1n, 10n));
  if (centimetres.d === 1n && centimetres.n >= 100n) return `${Number(centimetres.n) / 100}\u00a0m`;
  const feet = multiplyLength(length, rational(10n, 3048n));
  return feet.d === 1n && feet.n > 0n ? `${feet.n}\u00a0ft` : say.size(length);
}

/** A material without a cut plan: ready-made pieces are counted, the rest is told as a total. */
function countedDemand(role: string, definition: Definition, model: Model, sets: number, say: Wording): Demand {
  const material = definition.materials[role]!;
  const parts = model.parts.filter((part) => part.material === role);
  const pieces = parts.reduce((sum, part) => sum + part.count, 0) * sets;
  const isReady = parts.every((part) => part.readyMade);
  const sizes = listInWords(parts.map((part) => `${part.name} ${say.sizes(part.height, part.width)}`));
  const total = parts.reduce((sum, part) => addLengths(sum, multiplyLength(part.height, part.count * sets)), noLength);
  return {
    role, name: material.name, unit: "pieces", needed: pieces, inHand: 0, packSize: material.packCount, price: material.price,
    note: isReady ? "" : soldByLength.has(role) ? `${sizes}; together ${say.size(total)} if it is sold by length` : sizes,
  };
}

function postDemand(definition: Definition, model: Model, sets: number, say: Wording): readonly Demand[] {
  const material = definition.materials["posts"];
  const posts = postsOf(model);
  if (!material || !posts) return [];
  const demand = { role: "posts", unit: "pieces", inHand: 0 } as const;
  return [
    { ...demand, name: material.name, needed: posts.count * sets, packSize: material.packCount, price: material.price, note: `${say.size(posts.length)} long, with caps` },
    ...posts.extensions.map(({ length, count }) => ({ ...demand, name: `extensions for ${material.name}`, needed: count * sets, packSize: material.extensions?.packCount ?? 1, price: material.extensions?.price ?? null, note: `${say.size(length)} long` })),
  ];
}

/** Thread without a length on its spool is told as a total. */
function threadDemand(definition: Definition, model: Model, sets: number, say: Wording): readonly Demand[] {
  const material = definition.materials["thread"];
  if (!material || !model.thread || material.packLength) return [];
  return [{ role: "thread", name: material.name, unit: "lengths for one book", needed: sets, inHand: 0, packSize: 1, price: null, note: `${say.size(multiplyLength(model.thread.length, sets))} in all` }];
}

function orderOf({ price, ...demand }: Demand): OrderLine {
  const { needed, inHand, packSize } = demand;
  const packs = Math.ceil(Math.max(0, needed - inHand) / packSize);
  const packPrice = price && centsOf(price);
  return {
    ...demand, isCounted: true, packs, packPrice, price: packPrice === null ? null : packPrice * packs,
    over: inHand + packs * packSize - needed,
    used: packPrice === null ? null : Math.ceil((packPrice * 100 * needed) / packSize),
  };
}

/** Adhesives by weight, tapes by length: estimates of ours that say what they rest on. Of a roll only whole metres or feet count. */
function adhesiveLine({ name, steps, brushed, taped }: AdhesiveAmount, packs: readonly AdhesivePack[], plan: Plan, say: Wording): OrderLine {
  const inInches = say.unitName === "inches";
  const numbers = plan.steps.filter((step) => steps.includes(step.id)).map((step) => String(step.n));
  const where = `for ${numbers.length === 1 ? "step" : "steps"} ${listInWords(numbers)}`;
  const pack = packs.find((each) => each.name === name);
  const line = (unit: string, needed: number, packSize: number, note: string): OrderLine => {
    const demand = { role: "adhesive", name, unit, needed, inHand: 0, note } as const;
    return pack ? orderOf({ ...demand, packSize, price: pack.price }) : { ...demand, isCounted: false, packs: 0, packSize: 1, packPrice: null, price: null, over: 0, used: null };
  };
  if (brushed) {
    const area = inInches ? `${Math.ceil(brushed.squareCentimetres / 6.4516)}\u00a0in²` : `${brushed.squareCentimetres}\u00a0cm²`;
    const ounces = inInches ? `, ${Math.ceil(brushed.grams / 28.35)} oz` : "";
    return line("g, about", brushed.grams, pack?.grams ?? 1, `${where}: ${area} at ${brushed.gramsPerSquareMetre} g/m², and as much again for pot and brush${ounces}. Our estimate: weigh the pot before and after your own book`);
  }
  const inUnits = (length: Length): Rational => multiplyLength(length, inInches ? rational(10n, 3048n) : rational(1n, 1000n));
  return line(inInches ? "ft, about" : "m, about", Number(ceilRational(inUnits(taped!))), pack?.length ? Number(floorRational(inUnits(pack.length))) : 1, `${where}: a strip along each long edge that is glued`);
}

/** What the orders cost together. What has no price is named beside the sums; without any price there are none. */
export function addUpCosts(orders: readonly OrderLine[], definition: Definition, participants: number, sets: number): Costs {
  const { currency, kitMargin } = definition.class!;
  const priceable = orders.filter((line) => line.isCounted);
  const unpriced = [...new Set(orders.filter((line) => line.packPrice === null).map((line) => line.name))];
  const isUnknown = priceable.every((line) => line.packPrice === null);
  const money = (cents: number): string => (isUnknown ? "" : printMoney(cents, currency));
  const spend = priceable.reduce((sum, line) => sum + (line.price ?? 0), 0);
  const usedPerSet = ceilCents(priceable.reduce((sum, line) => sum + (line.used ?? 0), 0) / sets);
  return {
    toSpend: money(spend),
    perParticipant: money(ceilCents((spend * 100) / participants)),
    usedPerSet: money(usedPerSet),
    kitPrice: money(withMargin(usedPerSet, kitMargin)),
    unpriced,
  };
}
