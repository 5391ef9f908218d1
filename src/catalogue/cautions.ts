// Cautions of the bench: hazard, consequence, how to avoid it. Signal words as in ANSI Z535; NOTICE for damage only.

/** How bad it may get: death or grave injury will, may, a lesser injury may, or only damage may follow. */
export type SignalWord = "DANGER" | "WARNING" | "CAUTION" | "NOTICE";

/** Nature and source of the hazard, what happens, how to avoid it. */
export interface Caution {
  readonly signal: SignalWord;
  readonly hazard: string;
  readonly consequence: string;
  readonly avoid: string;
}

/** The cautions by id, as steps name them. */
export const cautions = {
  knife: {
    signal: "WARNING",
    hazard: "A craft knife or scalpel is razor-sharp and slips off a ruler that moves.",
    consequence: "It can cut a finger to the bone.",
    avoid: "Stand up, use a steel ruler with a safety edge, keep the holding hand behind the blade and away from its path, make several light cuts. Cap the knife whenever you put it down.",
  },
  boardCutter: {
    signal: "WARNING",
    hazard: "A guillotine or board shear closes with more force than a hand can stop.",
    consequence: "It can crush or sever fingers.",
    avoid: "Trained operator only, one person at the machine, guard and clamp in place, hands clear of the blade line before it moves.",
  },
  scissors: {
    signal: "CAUTION",
    hazard: "Scissors cut whatever is between their blades, and their points stab.",
    consequence: "They can cut the hand that holds the work.",
    avoid: "Keep the holding hand behind the blades, cut away from it, and hand scissors on closed, handles first.",
  },
  needle: {
    signal: "CAUTION",
    hazard: "A needle is hard to see on a bench, and it goes through suddenly.",
    consequence: "It can prick the hand under the work.",
    avoid: "Push it away from the other hand, keep it in a pin cushion or cork when it is not in use, and count needles back.",
  },
  awl: {
    signal: "CAUTION",
    hazard: "An awl goes through suddenly when the work gives way.",
    consequence: "It can stab the hand behind the work.",
    avoid: "Pierce downwards into a cork mat or waste board, never towards a hand; hold the work at the side. Put a cork on the point afterwards.",
  },
  drill: {
    signal: "WARNING",
    hazard: "A drill bit grabs as it breaks through and spins whatever is not clamped.",
    consequence: "It can wound the hand and throw chips into the eyes.",
    avoid: "Clamp the work to the bench over waste board, wear eye protection, tie back hair and sleeves, and let someone trained show you first.",
  },
  punch: {
    signal: "CAUTION",
    hazard: "A hollow punch is sharp at the rim, and a mallet can miss it.",
    consequence: "It can cut or bruise the fingers.",
    avoid: "Hold the punch low on the shaft, strike straight down on a cutting block, wear eye protection, and keep the other hand flat beside the work.",
  },
  boneFolder: {
    signal: "CAUTION",
    hazard: "A bone folder pressed hard along a ruler can jump off its end, and the edge of a fresh fold is sharp.",
    consequence: "It can bruise or cut a finger.",
    avoid: "Draw it with light pressure in two or three passes and stop short of your holding hand.",
  },
  weights: {
    signal: "CAUTION",
    hazard: "Weights and loaded boards slide and fall.",
    consequence: "They can crush fingers or feet.",
    avoid: "Lift with both hands, set weights down in the middle of the board, keep them away from the table's edge.",
  },
  wetAdhesive: {
    signal: "CAUTION",
    hazard: "Wet adhesive on the skin or in the eyes.",
    consequence: "It can irritate them; some people are allergic to preservatives in it or to wheat in paste.",
    avoid: "Use a brush, wash your hands before you touch your face, rinse eyes at once with plenty of water, and follow the maker's data sheet.",
  },
  solvent: {
    signal: "WARNING",
    hazard: "Solvent-based contact or multi-purpose cement gives off flammable vapour.",
    consequence: "It can catch fire, and breathing it makes you dizzy or ill.",
    avoid: "Use it only where the venue allows it, with good ventilation and no flame or spark near, and follow the maker's data sheet.",
  },
  press: {
    signal: "CAUTION",
    hazard: "A press or clamp closes on whatever is between its cheeks, and a heavy one tips off the bench.",
    consequence: "It can pinch fingers or fall on feet.",
    avoid: "Keep fingers on the outside of the boards, turn the screws by turns and by hand only, and set the press well in from the bench’s edge.",
  },
  hammer: {
    signal: "CAUTION",
    hazard: "A hammer glances off a rounded back.",
    consequence: "It can bruise the fingers that hold the book.",
    avoid: "Strike lightly and away from the holding hand, with the middle of the hammer’s face.",
  },
  smallParts: {
    signal: "WARNING",
    hazard: "Posts and caps are small enough to swallow.",
    consequence: "A small child can choke on them.",
    avoid: "Count them out and back, and keep them away from children under three.",
  },
  dust: {
    signal: "CAUTION",
    hazard: "Sanding or drilling board makes fine dust.",
    consequence: "It can irritate eyes and lungs.",
    avoid: "Wipe it up damp, do not blow it away, and open a window.",
  },
  paperEdge: {
    signal: "CAUTION",
    hazard: "Fresh edges of card and paper are sharp.",
    consequence: "They can cut a finger.",
    avoid: "Lift sheets by their faces and do not run a finger along an edge.",
  },
} as const satisfies Record<string, Caution>;

/** Id of a caution in the catalogue. */
export type CautionId = keyof typeof cautions;

/** Stands on every safety page. */
export const deferral =
  "The rules of the place you work in, local safety law and the data sheets of the products you use come first, and so does what a trained supervisor on the spot tells you. This sheet is not professional safety advice.";
