// Formulas as text that is both computed and printed, so the appendix can never show another sum than the one done.
import { addRational, divideRational, multiplyRational, rational, rationalFromDecimal, subtractRational } from "./rational.ts";
import { applyFunction, isFunctionName } from "./formula-functions.ts";
import { millimetresPerInch } from "./length.ts";
import type { Length, Unit } from "./length.ts";
import type { Quantity } from "./quantity.ts";

export type { Quantity } from "./quantity.ts";

/** What a formula needs from outside: the named values, and the ruler's step for `nearest`, `up` and `down`. */
export interface FormulaContext {
  lookUp(name: string): Quantity;
  readonly step: Length;
}

/** A formula that has been read: its text as written and what it says. */
export interface Formula {
  readonly text: string;
  readonly expression: Expression;
}

type Sign = "+" | "-" | "*" | "/";

/** Brackets are kept as written, so that a formula is printed as its author laid it out. */
type Expression =
  | { readonly kind: "number"; readonly digits: string; readonly unit: Unit | null }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "call"; readonly name: string; readonly given: readonly Expression[] }
  | { readonly kind: "bracket" | "negation"; readonly inner: Expression }
  | { readonly kind: "pair"; readonly sign: Sign; readonly left: Expression; readonly right: Expression };

interface Token {
  readonly kind: "number" | "name" | "sign";
  readonly text: string;
  /** Whether an opening bracket follows at once, as behind the name of a function. */
  readonly opensCall: boolean;
}

/** Signs as printed, and the ASCII ones that they stand for when a printed formula is read again. */
const printedSigns: Readonly<Record<Sign, string>> = { "+": "+", "-": "−", "*": "×", "/": "÷" };
const plainSigns: Readonly<Record<string, string>> = { "−": "-", "×": "*", "÷": "/" };

/**
 * Reads a formula such as `2 * stubs * stub depth + (stubs - 1) * floor gap + 10 mm`.
 * Names are lower-case words with single spaces; functions are `nearest`, `up`, `down` (to the ruler's step), `whole up`, `whole down`,
 * `max`, `min`, `root` and `arcsine`. The signs `×`, `−` and `÷` are read too.
 * @throws Error on a malformed formula or an unknown function, which is a mistake of ours.
 */
export function parseFormula(text: string): Formula {
  const tokens = tokensOf(text);
  let next = 0;
  const fault = (what: string): Error => new Error(`internal error: formula "${text}": ${what}`);
  const takeSign = (...signs: readonly string[]): string | null => {
    const token = tokens[next];
    if (token?.kind !== "sign" || !signs.includes(token.text)) return null;
    next += 1;
    return token.text;
  };
  const leftToRight = (signs: readonly Sign[], operand: () => Expression): Expression => {
    let left = operand();
    for (let sign = takeSign(...signs); sign; sign = takeSign(...signs)) {
      left = { kind: "pair", sign: sign as Sign, left, right: operand() };
    }
    return left;
  };
  const sum = (): Expression => leftToRight(["+", "-"], product);
  const product = (): Expression => leftToRight(["*", "/"], factor);
  const factor = (): Expression => {
    if (takeSign("-")) return { kind: "negation", inner: factor() };
    if (takeSign("(")) {
      const inner = sum();
      if (!takeSign(")")) throw fault("a bracket is not closed");
      return { kind: "bracket", inner };
    }
    const token = tokens[next];
    if (!token || token.kind === "sign") throw fault("a value is missing");
    next += 1;
    if (token.kind === "number") return { kind: "number", digits: token.text, unit: takeUnit() };
    return token.opensCall ? call(token.text) : { kind: "name", name: token.text };
  };
  const takeUnit = (): Unit | null => {
    const token = tokens[next];
    if (token?.kind !== "name" || (token.text !== "mm" && token.text !== "in")) return null;
    next += 1;
    return token.text;
  };
  const call = (name: string): Expression => {
    if (!isFunctionName(name)) throw fault(`no function is called "${name}"`);
    takeSign("(");
    const given = [sum()];
    while (takeSign(",")) given.push(sum());
    if (!takeSign(")")) throw fault(`the bracket of ${name} is not closed`);
    return { kind: "call", name, given };
  };

  const expression = sum();
  const left = tokens[next];
  if (left) throw fault(`"${left.text}" is not expected there`);
  return { text, expression };
}

/** The names of the values a formula uses, each once, in order of appearance; functions and units are left out. */
export function namesInFormula(formula: Formula): readonly string[] {
  const names = new Set<string>();
  const visit = (expression: Expression): void => {
    switch (expression.kind) {
      case "number": return;
      case "name": names.add(expression.name); return;
      case "call": expression.given.forEach(visit); return;
      case "pair": visit(expression.left); visit(expression.right); return;
      default: visit(expression.inner);
    }
  };
  visit(formula.expression);
  return [...names];
}

/**
 * Computes a formula exactly; only `root` and `arcsine` may leave the fractions.
 * @throws Error when dimensions do not fit (a length added to a number), on a name that `lookUp` refuses or a division by zero.
 */
export function evaluateFormula(formula: Formula, context: FormulaContext): Quantity {
  const fault = (what: string): Error => new Error(`internal error: formula "${formula.text}": ${what}`);
  const evaluate = (expression: Expression): Quantity => {
    switch (expression.kind) {
      case "number": return literal(expression.digits, expression.unit);
      case "name": return context.lookUp(expression.name);
      case "bracket": return evaluate(expression.inner);
      case "negation": {
        const { value, dimension } = evaluate(expression.inner);
        return { value: rational(-value.n, value.d), dimension };
      }
      case "call": return applyFunction(expression.name, expression.given.map(evaluate), context.step, fault);
      case "pair": return combine(expression.sign, evaluate(expression.left), evaluate(expression.right), fault);
    }
  };
  return evaluate(formula.expression);
}

/** The formula in typographic signs (× − ÷); `show` may put values in place of names. Without `show`, `parseFormula` reads it back. */
export function printFormula(formula: Formula, show: (name: string) => string = (name) => name): string {
  const print = (expression: Expression): string => {
    switch (expression.kind) {
      case "number": return expression.unit ? `${expression.digits}\u00a0${expression.unit}` : expression.digits;
      case "name": return show(expression.name);
      case "bracket": return `(${print(expression.inner)})`;
      case "negation": return `−${print(expression.inner)}`;
      case "call": return `${expression.name}(${expression.given.map(print).join(", ")})`;
      case "pair": return `${print(expression.left)} ${printedSigns[expression.sign]} ${print(expression.right)}`;
    }
  };
  return print(formula.expression);
}

function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const rest = text.slice(at);
    const match = /^(?<blank>\s+)|^(?<number>\d+(?:\.\d+)?)|^(?<name>[a-z][a-z0-9]*(?: [a-z][a-z0-9]*)*)|^(?<sign>[-+*/(),−×÷])/u.exec(rest);
    if (!match?.groups) throw new Error(`internal error: formula "${text}" cannot be read at "${rest}"`);
    const { number, name, sign } = match.groups;
    at += match[0].length;
    if (number) tokens.push({ kind: "number", text: number, opensCall: false });
    else if (name) tokens.push({ kind: "name", text: name, opensCall: text[at] === "(" });
    else if (sign) tokens.push({ kind: "sign", text: plainSigns[sign] ?? sign, opensCall: false });
  }
  return tokens;
}

function literal(digits: string, unit: Unit | null): Quantity {
  const value = rationalFromDecimal(digits)!;
  if (unit === null) return { value, dimension: 0 };
  return { value: unit === "mm" ? value : multiplyRational(value, millimetresPerInch), dimension: 1 };
}

function combine(sign: Sign, left: Quantity, right: Quantity, fault: (what: string) => Error): Quantity {
  switch (sign) {
    case "*": return { value: multiplyRational(left.value, right.value), dimension: left.dimension + right.dimension };
    case "/":
      if (right.value.n === 0n) throw fault("divides by zero");
      return { value: divideRational(left.value, right.value), dimension: left.dimension - right.dimension };
    default:
      if (left.dimension !== right.dimension) throw fault("adds values of different dimension");
      return { value: (sign === "+" ? addRational : subtractRational)(left.value, right.value), dimension: left.dimension };
  }
}
