import { formulas, seen, seenSecondHand } from '../record.ts';

const annuities = { basis: 'derived', from: 'arithmetic of annuities: each instalment is worth less today, the later it comes' } as const;
const counting = { basis: 'derived', from: 'counting' } as const;
const a329 = (where: string) => seenSecondHand('Iowa State Extension A3-29, Estimating Farm Machinery Costs', where);
const farmdoc = (where: string) => seen('University of Illinois farmdoc, Machinery Cost Estimates: Tractors', where);

/** The formulas of loans, of owning a machine, and of a day's vibration and noise. */
export const moneyFormulas = formulas({
  'loan.instalment': {
    kind: 'formula', statement: 'Monthly instalment that repays a loan; without interest the loan by the months',
    formula: 'instalment = principal × (annual rate / 12) / (1 − (1 + annual rate / 12)^−months)', source: annuities,
  },
  'loan.principal': {
    kind: 'formula', statement: 'Loan that a monthly instalment repays; without interest the instalment times the months',
    formula: 'principal = instalment × (1 − (1 + annual rate / 12)^−months) / (annual rate / 12)', source: annuities,
  },
  'loan.apr': {
    kind: 'formula', statement: 'Annual percentage rate (APR): the rate at which the instalments are worth what was financed, found by trying',
    formula: 'financed = instalment × (1 − (1 + apr / 12)^−months) / (apr / 12)',
    source: seen('12 CFR 1026 (Regulation Z of the United States), appendix J', '(a)(2) and (b)(1), actuarial method'),
  },
  'own.capital-recovery': {
    kind: 'formula', statement: 'Loss of value and interest in equal yearly amounts; without interest the loss by the years',
    formula: 'cost = (price − end value) × annual rate × (1 + annual rate)^years / ((1 + annual rate)^years − 1) + end value × annual rate',
    source: seenSecondHand('Solved problems of engineering economy, authors not shown; Iowa State Extension A3-29 reckons by it', 'capital recovery with salvage value'),
  },
  'own.depreciation': {
    kind: 'formula', statement: 'Loss of value in a year', formula: 'depreciation = (price − end value) / years', source: farmdoc('depreciation'),
  },
  'resale.amount': {
    kind: 'formula', statement: 'What is left of a price', formula: 'value = price × share',
    source: seen('Iowa State Extension A3-29, Estimating Farm Machinery Costs', 'salvage value = list price × remaining value factor'),
  },
  'own.housing-cost': {
    kind: 'formula', statement: 'Taxes, insurance and housing in a year, on the value in the middle of the years',
    formula: 'housing = share × (price + end value) / 2', source: a329('taxes, insurance and housing, as its calculator reckons them'),
  },
  'own.per-hour': {
    kind: 'formula', statement: 'Cost of an hour', formula: 'cost = yearly / hours', source: counting,
  },
  'own.sum': {
    kind: 'formula', statement: 'Costs taken together', formula: 'cost = sum of the parts', source: counting,
  },
  'own.spread': {
    kind: 'formula', statement: 'What a cost or a value may turn out as', formula: 'outcome = cost × multiple', source: counting,
  },
  'own.loan': {
    kind: 'formula', statement: 'What borrowing costs more than one’s own money, worth today: the instalments and what is left to repay at the end, less what was financed',
    formula: 'extra = worth + rest / (1 + annual rate / 12)^months − financed', source: annuities,
  },
  'own.labour': {
    kind: 'formula', statement: 'Cost of the driver for each hour of the machine', formula: 'cost = wage × factor',
    source: farmdoc('labour at 1.1 times machine hours'),
  },
  'own.repairs': {
    kind: 'formula', statement: 'Repairs between two readings of the hour meter, by figures for farm tractors',
    formula: 'repairs = rf1 × list × ((hours to / 1000)^rf2 − (hours from / 1000)^rf2)',
    source: seenSecondHand('ASABE D497, Agricultural Machinery Management Data', 'clause 6, accumulated repair and maintenance costs'),
  },
  'own.fuel': {
    kind: 'formula', statement: 'Fuel a tractor takes, averaged over its year and its jobs', formula: 'use = power × per energy', source: a329('average fuel use'),
  },
  'own.fuel-cost': {
    kind: 'formula', statement: 'Cost of the fuel of an hour, from the price of a US gallon, which is 0.003785411784 m³',
    formula: 'cost = use × 3600 / 0.003785411784 × price', source: { basis: 'derived', from: 'units: an hour is 3,600 s, a US gallon 231 cubic inches' },
  },
  'own.lubricants': {
    kind: 'formula', statement: 'Cost of oil and filters of an hour', formula: 'cost = fuel cost × share', source: a329('lubrication'),
  },
  'vibration.daily': {
    kind: 'formula', statement: 'Vibration of a day in the seat, as if it lasted eight hours', formula: 'exposure = acceleration × √(time / day)',
    source: seen('The Control of Vibration at Work Regulations 2005, United Kingdom', 'schedule 2, part I'),
  },
  'vibration.time-to': {
    kind: 'formula', statement: 'Time in the seat until a daily exposure is reached', formula: 'time = day × (limit / acceleration)²',
    source: { basis: 'derived', from: 'the daily exposure, solved for the time' },
  },
  'noise.time': {
    kind: 'formula', statement: 'Time a day at a level of noise until something is to be done', formula: 'time = day / 2^((level − action) / exchange)',
    source: seen('29 CFR 1910.95, appendix A, table G-16A, and the page of NIOSH on noise', 'durations by level, which the formula reproduces'),
  },
});
