import type { QuestionId } from '../../answers/questions.ts';
import type { Criterion, TaskId } from '../../answers/schema.ts';
import type { TypedFault } from '../../answers/read-typed.ts';
import type { ImplementKind } from '../../catalogue/schema.ts';
import type { Capability, ComfortWish, NotCleared } from '../../needs/need.ts';
import type { Addition } from '../../ranking/addition.ts';
import type { OwningPart } from '../../ranking/owning.ts';
import type { Spec } from '../../ranking/verdict.ts';
import type { FigureId, FormulaId } from '../../trade/book.ts';
import type { FormulaName } from '../../trade/read-formula.ts';
import type { Law } from '../../trade/record.ts';
import type { UnitWords } from '../../units/show.ts';
import type { CautionId } from '../cautions.ts';
import type { Spot } from '../moves.ts';
import type { Contrast } from '../schema.ts';
import type { ComparedFact } from '../side-by-side.ts';
import type { SkipReason } from '../skip-reason.ts';
import type { SteerId } from '../steers.ts';

/** What a sentence may speak of, already shown in the reader's units; what a reason hasn't got is ''. */
export interface Said {
  has: string;
  wants: string;
  /** Difference of the two, always positive. */
  apart: string;
  best: string;
  worst: string;
  price: string;
  mass: string;
  /** Name of the part: a loader, deck, cab or implement. */
  part: string;
  /** What the buyer wants to do, in words. */
  task: string;
  year: string;
  /** Said of a machine by its typical price, not of a unit by its own. */
  typical: boolean;
  /** Which opening a width speaks of. */
  passage: 'gate' | 'door';
  /** The load rides on the hitch and isn't lifted by the loader. */
  onHitch: boolean;
  /** Nothing here that holds the load goes on its coupling. */
  noCoupling: boolean;
  /** Name of a second part, beside `part`. */
  other: string;
  /** Terms of a loan: what is paid at once, in how many instalments, at what rate a year. */
  deposit: string;
  months: string;
  rate: string;
  /** The specs nobody gave, as a list in words. */
  missing: string;
}

type Sentence = (said: Said) => string;

/** In how many of the ways to weigh: of ten, where it is neither all of them nor none nor close to that. */
export type Often = 'every' | 'nearly-every' | 'hardly-any' | 'none' | number;

export type UnitReasonId =
  | 'unit.lien-open' | 'unit.imported' | 'unit.pto-shield-missing' | 'unit.meter-unverified'
  | 'unit.held' | 'unit.service-record' | 'unit.service-record-unknown' | 'unit.generation-edge'
  | 'lot.typical-price' | 'condition.unseen';

export type ReasonId =
  | `${Capability}.${'met' | 'failed' | 'unknown'}`
  | `addition.${Addition['what']}`
  | `criterion.${Criterion}.${'strong' | 'weak' | 'unknown'}`
  | 'parts.not-together' | 'figure.estimated' | 'standing.musts-met' | 'standing.none-failed' | 'wish.left-out'
  | UnitReasonId;

/** Words of one question: heading, why it is asked, and its fields by path. */
export interface QuestionWords {
  ask: string;
  why: string;
  hint?: string;
  fields: Readonly<Record<string, { label: string; hint?: string; options?: Readonly<Record<string, string>>; hints?: Readonly<Record<string, string>> }>>;
}

/** Needs whose bound the buyer gave, and could move. */
export type BoundId =
  | 'land.gate' | 'storage.door-width' | 'storage.door-height' | 'storage.depth' | 'budget.limit' | 'budget.monthly'
  | 'mow-lawn.hours' | 'dig.backhoe' | 'carry-implement.lift' | 'chip-brush.implement'
  | `${'lift-bales' | 'lift-pallets' | 'handle-logs'}.${'weight' | 'height'}`;

/** The bound that would do, the buyer's own, and how far they are apart. */
interface MovedBound {
  to: string;
  from: string;
  more: string;
}

/** What a language says while it asks: all a page needs before there is a result. */
export interface AskingWords {
  language: string;
  direction: 'ltr' | 'rtl';
  decimalMark: '.' | ',';
  /** Joins a list: "a, b and c". */
  list(items: readonly string[]): string;
  units: UnitWords;
  tasks: Readonly<Record<TaskId, string>>;
  wishes: Readonly<Record<ComfortWish | 'thirdFunction', string>>;
  criteria: Readonly<Record<Criterion, string>>;
  questions: Readonly<Record<QuestionId, QuestionWords>>;
  faults: Readonly<Record<TypedFault['fault'], (said: { label: string; word: string; units: string; from: string; to: string; example: string; one: string; other: string }) => string>>;
  wizard: {
    step(now: number, atMost: number): string;
    stepOnly(now: number): string;
    standing(count: number, of: number): string;
    why: string;
    notSure: string;
    next: string;
    back: string;
    seeResult: string;
    backToQuestions: string;
    thereIsAProblem: string;
    chooseOne: string;
    understood(amount: string): string;
    yes: string;
    no: string;
    place(rank: number): string;
    nothingChosen: string;
    /** Stands in a list to pull down until something of it is chosen. */
    choose: string;
    unitsUs: string;
    unitsMetric: string;
    unitsLabel: string;
    languageLabel: string;
    /** Said behind the label of a box for money. */
    moneyHint(currency: string): string;
    startAgain: string;
    undoStartAgain: string;
    loading: string;
    /** Said of a question that wasn't asked, by why it needn't be; the machines it speaks of as a list. */
    skipped: Readonly<Record<SkipReason, (machines: string) => string>>;
    catalogueMissing: string;
    catalogueFaulty: string;
    catalogueEmpty: string;
    tryAgain: string;
  };
}

/** What a language says of a result. */
export interface TellingWords {
  /** Names of the frame classes in this language; where one is missing the catalogue's own name stands. */
  frames: Readonly<Record<string, string>>;
  tiers: Readonly<Record<'economy' | 'standard' | 'deluxe', string>>;
  /** Parts of a machine that can't always be on together. */
  parts: Readonly<Record<'backhoe' | 'hitch' | 'loader' | 'deck' | 'cab', string>>;
  /** Implements by kind, where the dealer lists none. */
  implements: Readonly<Record<ImplementKind, string>>;
  specs: Readonly<Record<Spec, string>>;
  /** What a need asks for, as a short noun phrase, by its id. */
  needs: Readonly<Record<string, string>>;
  reasons: Readonly<Record<ReasonId, Sentence>>;
  additions: Readonly<Record<Addition['what'], Sentence>>;
  notCleared: Readonly<Record<NotCleared['id'], (tasks: string) => string>>;
  /** By the task they speak of, if any, and by figures of the rule book already shown. */
  cautions: Readonly<Record<CautionId, (task: string, figures?: Readonly<Record<string, string>>) => string>>;
  /** What each formula of the rule book reckons. */
  formulas: Readonly<Record<FormulaId, string>>;
  /** What the names in a formula are called. */
  formulaNames: Readonly<Record<FormulaName, string>>;
  /** A sum from one bound to another, as it stands before what is summed. */
  formulaSum(from: string, to: string): string;
  /** What stands between a label and what it labels, and between two things said in one line. */
  joins: Readonly<Record<'colon' | 'semicolon', string>>;
  /** Names of the terms of a working. */
  terms: Readonly<Record<string, string>>;
  /** The terms every result carries where the dealer gave none. */
  guidance: string;
  result: {
    title: string;
    none: string;
    /** The answer in a line, from the name of a frame and the words of a trim. */
    lead(frame: string, tier: string): string;
    standing(count: number): string;
    notClearedHeading: string;
    moreMachines(count: number): string;
    askHeading: string;
    askExplained: string;
    ruledOutHeading(count: number): string;
    why: string;
    drawbacks: string;
    unknowns: string;
    moreReasons(count: number): string;
    working: string;
    workingSource: string;
    package: string;
    packageFrom(price: string): string;
    packageRange(low: string, high: string): string;
    priceUnknown: string;
    pricePlus: string;
    machineAlone(price: string): string;
    /** What it costs to own and run, under assumptions that are said with it. */
    owning(year: string, hour: string, years: string, hours: string): string;
    owningUnknown(missing: string): string;
    owningHeading: string;
    owningParts: Readonly<Record<OwningPart, string>>;
    /** Labour to fit what is added, in hours and money. */
    fitting(hours: string, price: string): string;
    additionsHeading: string;
    unitsHeading(count: number): string;
    noUnits: string;
    unitVerdict: Readonly<Record<'stands' | 'ask' | 'ruled-out', string>>;
    hours(hours: string): string;
    changesHeading: string;
    withoutNeed(need: string, machines: string): string;
    withoutTask(task: string, machines: string): string;
    cautionsHeading: string;
    termsHeading: string;
    answersHeading: string;
    /** The page before the result, where all answers are checked. */
    check: Readonly<Record<'title' | 'explained' | 'next', string>>;
    /** Ways to another first machine, each of which changes one answer, and what moved by it. */
    steers: {
      heading: string;
      explained: string;
      to: Readonly<Record<SteerId, string>>;
      none: Readonly<Record<SteerId, string>>;
      changed(question: string, to: string, from: string): string;
      moved(machine: string, to: string, from: string): string;
      spot(spot: Spot): string;
      undo: string;
    };
    compare: {
      heading: string;
      explained: string;
      facts: Readonly<Record<ComparedFact, string>>;
      points(criterion: string): string;
      outcomes: Readonly<Record<'met' | 'failed' | 'unknown', string>>;
      /** Said of a row in which the machines differ. */
      differs: string;
      same(count: number): string;
      notKnown: string;
    };
    chart: Readonly<Record<'heading' | 'explained' | 'inTable' | 'total', string>>;
    change: string;
    changeHidden(question: string): string;
    notSaid: string;
    scoreHeading: string;
    /** Where the weights come from: the buyer's order, as a list, or no order at all. */
    weightsFrom(order: string): string;
    weightsAlike: string;
    changeOrder: string;
    points(points: string, weight: string): string;
    dealersFigure: string;
    contact: string;
    asOf(day: string): string;
    /** Said of the dealer's stock: that the list is old, that nothing is on the lot, and what a photo shows. */
    stock: { old(day: string): string; none: string; photo(what: string): string };
    /** What has the form shown by which a shortlist is mailed or word asked for, and in place of it where it can't be had. */
    byMail: Readonly<Record<'shortlist' | 'notify' | 'missing', string>>;
    /** Above what is folded away by which a buyer takes the result along, and in place of it where it can't be had. */
    takeAlong: { open: string; missing: string };
    /** Above what is folded away by which one unit, or a machine of which none is on the lot, is looked at more closely. */
    closer: { unit: string; machine: string };
    must: string;
  };
  /** Why one stands above another, and what one gives up for another. */
  contrast: {
    whyBelow(first: string): string;
    above(upper: string, lower: string): string;
    /** What decides the order of two. */
    by: Readonly<Record<Contrast['by'], string>>;
    mustsHeading: string;
    pointsHeading: string;
    lackingHeading: string;
    liftHeading: string;
    /** What a demand has nothing to judge by, such as a loader where there is none. */
    moot: string;
    /** As it stands behind "It would draw level if it weren't behind …". */
    topics: Readonly<Record<Criterion, string>>;
    /** Of what fits a ground least: a weight, the room beside it or its turning circle. */
    figures: Readonly<Record<Exclude<Criterion, 'fit'> | 'fit.mass' | 'fit.side' | 'fit.turn', (figure: string) => string>>;
    notKnown: string;
    /** One criterion of two: what it has, what the other has, and how many points of 100 that is. */
    gap(topic: string, own: string, other: string, points: string): string;
    gapOfPoints(topic: string, points: string): string;
    points(points: string, ahead: boolean): string;
    liftNeeds(upper: string, needs: string): string;
    liftCriteria(upper: string, topics: string): string;
    lackingCriteria(topics: string): string;
    gains: Readonly<Record<Criterion, string>>;
    losses: Readonly<Record<Criterion, string>>;
    trade(than: string, gains: string, losses: string): string;
  };
  /** How firm a place is, over every weighting that agrees with what the buyer said. */
  robustness: {
    first(often: Often): string;
    topThree(often: Often): string;
    tiedWith(machines: string): string;
    /** The nearest weights that put the second first: the greatest changes, of 100 each, and if there are lesser ones. */
    overtakes(changes: string, lesser: boolean): string;
    weightChange(criterion: string, from: string, to: string): string;
    overtakesByAHair: string;
    neverFirst: string;
  };
  waysOut: {
    /** Said behind a wish that is missed by a little. */
    near: string;
    /** A bound moved, as it stands after "with". */
    relaxed: Readonly<Record<BoundId, (bound: MovedBound) => string>>;
    withRelaxed(relaxed: string, machines: string): string;
    saves(amount: string): string;
    heading: string;
    explained: string;
    more(count: number): string;
    /** What is given up, as one of a list. */
    give: { relaxed(relaxed: string): string; need(need: string): string; task(task: string): string };
    way(given: string, machines: string, price: string): string;
    hire: Readonly<Record<'rare' | 'unsaid', (task: string) => string>>;
    conflictsHeading: string;
    alone(need: string): string;
    together(needs: string): string;
    moreConflicts: string;
  };
  /** The machines drawn side by side. */
  lineUp: {
    heading: string;
    show: string;
    view: string;
    views: Readonly<Record<'side' | 'rear', string>>;
    hint: string;
    description(machines: number): string;
    legend: Readonly<Record<'assumed' | 'room', string>>;
    standing: Readonly<Record<'stands' | 'ask' | 'ruled-out' | 'not-judged', string>>;
    things: Readonly<Record<'door' | 'gate' | 'trailer' | 'bale' | 'pallet' | 'log', string>>;
    sizes: Readonly<Record<'width' | 'rops' | 'cab' | 'length' | 'withLoader' | 'reach', (figure: string) => string>>;
    fits: Readonly<Record<'door.width' | 'door.height' | 'gate.width' | 'trailer.length' | 'trailer.width' | 'bale.height' | 'pallet.height' | 'log.height', string>>;
    outcomes: Readonly<Record<'yes' | 'no' | 'unknown', string>>;
    inWords: string;
  };
  /** The pictures beside a question, by figures that are shown already. */
  pictures: {
    about(figure: string): string;
    lessThan(figure: string): string;
    moreThan(figure: string): string;
    range(from: string, to: string): string;
    /** Said of the thing the buyer has chosen. */
    chosen(name: string): string;
    slope: {
      title: string;
      /** By the option of the question; `own` is what the buyer measured. */
      names: Readonly<Record<'flat' | 'rolling' | 'steep' | 'own', string>>;
      /** How far it goes up on how long a run. */
      upIn(rise: string, run: string): string;
    };
    bales: { title: string; post: string; own: string };
    deck: { title: string; names: Readonly<Record<'belly' | 'rear', string>> };
    pallets: { title: string; middle(figure: string): string };
  };
  sources: {
    published(title: string, where: string): string;
    secondHand(title: string, where: string): string;
    derived(from: string): string;
    commonPractice: string;
    memory(title: string): string;
  };
  /** What a derived figure follows from. */
  laws: Readonly<Record<Law, string>>;
}

/**
 * Everything a language says. A language is one folder with these two parts: what is missing fails the type check.
 */
export type Words = AskingWords & TellingWords;

/** The same, with what only the command line prints: what the figures of the rule book stand for. */
export type PrintedWords = Words & { figures: Readonly<Record<FigureId, string>> };
