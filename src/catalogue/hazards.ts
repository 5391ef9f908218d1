// What each caution means for a room full of people: who could be hurt, what the room does about it, and who checks what and when.
import type { CautionId } from "./cautions.ts";
import type { ToolId } from "./tools.ts";

/** A caution seen by whoever answers for the room. The maker's own precaution stands with the caution. */
export interface RoomHazard {
  /** Where it gets whoever does the work. */
  readonly maker: string;
  /** Who else at the table, and how. */
  readonly neighbours: string;
  /** Children, people with allergies, whoever clears up. */
  readonly others: string;
  /** What the room does beyond what each maker does. */
  readonly room: string;
  /** Who looks at what, and when. */
  readonly check: string;
  /** Tools that are counted out and back because of it. */
  readonly counted: readonly ToolId[];
  /** What to ask the class beforehand; empty when there is nothing to ask. */
  readonly ask: string;
  /** What a kit that holds the source of the hazard says on its bag; empty where a kit holds none. */
  readonly onBag: string;
}

/** By the caution's id: a new caution is not complete without its line here. */
export const roomHazards: Readonly<Record<CautionId, RoomHazard>> = {
  knife: {
    maker: "fingers and thumb of the hand on the ruler; the thigh of whoever cuts sitting down",
    neighbours: "whoever sits beside or opposite, when an elbow is nudged or a blade snaps",
    others: "children; whoever finds a loose blade while clearing up",
    room: "Cut at a table of its own, an arm’s length between two people, nobody opposite. Put used blades into a closed tin at once, never into the bin.",
    check: "Teacher, before the first cut: blades new and tight, rulers with a safety edge. At the end: knives counted, blades in the tin.",
    counted: ["knife"], ask: "How old is the youngest? Who has not used a craft knife before?", onBag: "",
  },
  boardCutter: {
    maker: "the fingers that feed the work or hold the clamp",
    neighbours: "whoever steadies the work from the other side or reaches for an offcut",
    others: "children, and anybody who has not been trained on this machine: they keep behind a line on the floor",
    room: "Cut before the class comes where you can. Lock the blade whenever the operator steps away.",
    check: "The venue’s trained operator, before each use: guard, clamp and blade stop. Teacher: nobody else within reach.",
    counted: [], ask: "", onBag: "",
  },
  scissors: {
    maker: "the fingers of the hand that holds the work",
    neighbours: "whoever is handed scissors points first, or walks into open ones",
    others: "young children: round-ended scissors for them",
    room: "Scissors lie closed in the middle of the table. Nobody walks about with open ones.",
    check: "One person at each table, before the break and at the end: scissors closed and counted.",
    counted: ["scissors"], ask: "Who is left-handed and needs other scissors?", onBag: "",
  },
  needle: {
    maker: "the fingertips under the work",
    neighbours: "whoever sits within the reach of a long thread drawn out, eyes first",
    others: "children; bare feet and whoever clears up, when a needle has dropped",
    room: "Seat people so far apart that an arm can draw the thread out sideways, never towards a face. Look for a lost needle at once, with a magnet.",
    check: "Teacher, at the end of each sitting: needles counted back into their cork.",
    counted: ["needle", "curvedNeedle"], ask: "", onBag: "",
  },
  awl: {
    maker: "the palm or the leg under the work",
    neighbours: "whoever steadies the work from the other side",
    others: "children: an adult pierces for them, or the work comes pierced",
    room: "Pierce on the table only, never on a lap. Nobody holds work for somebody else.",
    check: "Teacher, before the first hole: a cork mat or waste board at every place. At the end: awls counted, a cork on each point.",
    counted: ["awl"], ask: "How old is the youngest?", onBag: "",
  },
  drill: {
    maker: "the hand that holds the work down; eyes; long hair and sleeves",
    neighbours: "whoever stands within two metres without eye protection",
    others: "children: the teacher drills for them",
    room: "One drilling place by the wall, its cable out of the way, eye protection lying there for each person at it.",
    check: "Teacher, before each turn: work clamped, hair and sleeves tied back, eye protection on. The machine unplugged when it is left.",
    counted: [], ask: "Who has drilled before?", onBag: "",
  },
  punch: {
    maker: "the fingers that hold the punch",
    neighbours: "whoever leans over to look: a mallet swings back as well",
    others: "children; people who are troubled by loud blows",
    room: "Punch on the floor end or over a table’s leg, where the top does not bounce. Say when the hammering begins.",
    check: "Teacher, before each turn: mallet head tight, cutting block under the work, eye protection on. At the end: punches counted.",
    counted: ["holeTool"], ask: "Who is troubled by loud noise?", onBag: "",
  },
  boneFolder: {
    maker: "the knuckles of the hand on the ruler, and fingertips on fresh folds",
    neighbours: "nobody else, as long as each works at a place of their own",
    others: "people with sore or thin skin: offer them finger cots",
    room: "Keep plasters within reach: a fold’s edge cuts unnoticed, and blood spoils the work.",
    check: "Each maker, before scoring: no splinter or crack in the folder’s edge.",
    counted: [], ask: "", onBag: "",
  },
  weights: {
    maker: "fingers between weight and board; feet",
    neighbours: "the feet of whoever passes the shelf or table where the work rests",
    others: "children; people who should not lift",
    room: "Set aside one low, firm table for work under weight, away from where people walk. Stack no higher than two.",
    check: "Teacher, when the work is put down and before leaving: nothing stands over an edge.",
    counted: [], ask: "Who should not lift 5 kg?", onBag: "",
  },
  wetAdhesive: {
    maker: "skin of the hands; eyes, when a hand rubs them",
    neighbours: "whoever shares the pot, the brush or the towel",
    others: "people allergic to wheat (in paste), to preservatives (in PVA and mixes) or to latex (in gloves); young children, who put fingers into mouths",
    room: "Have water, soap and paper towels in the room, and nothing to eat or drink on the table. Label every pot with what is in it.",
    check: "Teacher, before the pots are opened: data sheets read and at hand, allergies asked, a tap or an eye bath within a few steps.",
    counted: [], ask: "Who is allergic to wheat, to preservatives or to latex?", onBag: "",
  },
  solvent: {
    maker: "lungs, head and eyes; burns when the vapour catches fire",
    neighbours: "everybody in the room: the vapour spreads along the floor",
    others: "pregnant people, people with asthma and children: they leave while it is used",
    room: "Only where the venue allows it: windows open on two sides, no flame, heater or switch in use near it, a lid on the tin, rags in a closed metal bin.",
    check: "Whoever is responsible for the building, beforehand: leave given in writing. Teacher: ventilation running before the tin is opened.",
    counted: [], ask: "Who has asthma or is pregnant?", onBag: "",
  },
  press: {
    maker: "fingers between the cheeks; feet, when it tips",
    neighbours: "whoever helps to close it",
    others: "children: they hand the work over and stand back",
    room: "Stand presses well in from the edge of a firm table. One person loads and closes a press.",
    check: "Teacher, before it is closed: fingers on the outside of the boards.",
    counted: [], ask: "", onBag: "",
  },
  hammer: {
    maker: "the fingers that draw the back round",
    neighbours: "whoever sits beside: leave a hammer’s length on both sides",
    others: "people who are troubled by loud blows",
    room: "Hammer at the corner over a table’s leg. Two people hammer at a table at the most.",
    check: "Teacher, before the first blow: heads tight on their handles. At the end: hammers counted.",
    counted: ["hammer"], ask: "Who is troubled by loud noise?", onBag: "",
  },
  smallParts: {
    maker: "nobody who keeps them out of the mouth",
    neighbours: "a child or an animal at the same table",
    others: "children under three, and whoever still puts things into the mouth",
    room: "Hand them out in a closed tray and pick up at once what drops.",
    check: "One person at each table, at the end: every part counted into a book or back into the tray.",
    counted: [], ask: "Will a child under three be in the room?", onBag: "Small parts: keep from children under three.",
  },
  dust: {
    maker: "eyes and lungs",
    neighbours: "whoever sits downwind",
    others: "people with asthma; people who wear contact lenses",
    room: "Sand and drill at one place near an open window. Wipe up damp before the next group comes.",
    check: "Teacher, before it begins: window open, dust masks lying there for those who want one.",
    counted: [], ask: "Who has asthma?", onBag: "",
  },
  paperEdge: {
    maker: "fingertips and the web of the thumb",
    neighbours: "whoever takes a sheet from somebody’s hand",
    others: "people with thin skin, or who bleed easily",
    room: "Keep plasters on every table.",
    check: "Teacher, before the class: plasters are there.",
    counted: [], ask: "", onBag: "",
  },
};
