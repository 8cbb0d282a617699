import type { WorkedCase } from '../worked-case.ts';

const a329 = 'Iowa State Extension A3-29';
const calculator = `${a329}, output of its calculator, printed`;
const older = `${a329}, an older edition, printed`;
const farmdoc = 'University of Illinois farmdoc, Machinery Cost Estimates: Tractors, printed';
const grower = `${a329} as a grower’s article restates it, second-hand, printed there`;
const table3 = 'Iowa State Extension, accumulated repair costs as a percentage of list price, as transcribed by a student, second-hand';
const appendixJ = '12 CFR 1026 (Regulation Z), appendix J, example (c)(1)(i), second-hand: as a public test of its examples gives it';
const annuity = 'arithmetic of annuities; the sum is beside the row';
const arithmetic = 'arithmetic';
const niosh = 'NIOSH, page on noise, table of times, printed';
const osha = '29 CFR 1910.95, appendix A, table G-16A, printed';
const canada = 'Canada, National Joint Council directive on noise, table of durations, printed; 87 dB(A) there';
const law = '2002/44/EC, limits printed; the sum is beside the row';

const loans: WorkedCase[] = [
  // 20,000 × 0.005 / (1 − 1.005^−60) = 100 / 0.25862780
  { name: '20,000 at 6 % over 60 months', formula: 'loan.instalment', given: { principal: 20_000, annualRate: 0.06, months: 60 }, expect: 386.66, within: 0.005, source: annuity },
  { name: '21,000 at 6.9 % over 48 months', formula: 'loan.instalment', given: { principal: 21_000, annualRate: 0.069, months: 48 }, expect: 501.9, within: 0.005, source: 'manual of a database program, function PMT, printed' },
  { name: '200,000 at 7.5 % over 15 years', formula: 'loan.instalment', given: { principal: 200_000, annualRate: 0.075, months: 180 }, expect: 1854.0247200054619, within: 1e-8, source: 'NumPy 1.3 manual, function pmt, printed' },
  { name: '7,500 at 14.5 % over 36 months', formula: 'loan.instalment', given: { principal: 7500, annualRate: 0.145, months: 36 }, expect: 258.16, within: 0.005, source: 'exercise of a computing course with its output, second-hand' },
  // 22,498.90 less a tenth down
  { name: '20,249.01 at 6.9 % over 60 months', formula: 'loan.instalment', given: { principal: 20_249.01, annualRate: 0.069, months: 60 }, expect: 400, within: 0.005, source: annuity },
  // 1,200 / 12
  { name: '1,200 without interest over a year', formula: 'loan.instalment', given: { principal: 1200, annualRate: 0, months: 12 }, expect: 100, within: 1e-9, source: arithmetic },
  // 1,000 × 1.01: all of it after a month
  { name: '1,000 at 12 % for one month', formula: 'loan.instalment', given: { principal: 1000, annualRate: 0.12, months: 1 }, expect: 1010, within: 1e-9, source: arithmetic },
  // 400 × (1 − 1.00575^−60) / 0.00575; with a tenth of the price down it buys 20,249.01 / 0.9 = 22,498.90
  { name: '400 a month at 6.9 % over 60 months', formula: 'loan.principal', given: { instalment: 400, annualRate: 0.069, months: 60 }, expect: 20_249.01, within: 0.01, source: annuity },
  { name: '1,854.02 a month at 7.5 % over 15 years', formula: 'loan.principal', given: { instalment: 1854.0247200054619, annualRate: 0.075, months: 180 }, expect: 200_000, within: 1e-6, source: 'NumPy 1.3 manual, function pmt, printed, the other way round' },
  { name: '100 a month without interest over a year', formula: 'loan.principal', given: { instalment: 100, annualRate: 0, months: 12 }, expect: 1200, within: 1e-9, source: arithmetic },
  { name: '5,000 repaid by 24 times 230', formula: 'loan.apr', given: { financed: 5000, instalment: 230, months: 24 }, expect: 0.0969, within: 0.00005, source: appendixJ },
  { name: '21,000 repaid by 48 times 501.90', formula: 'loan.apr', given: { financed: 21_000, instalment: 501.9, months: 48 }, expect: 0.069, within: 0.000005, source: 'manual of a database program, function PMT, printed, the other way round' },
  { name: '200,000 repaid by 180 times 1,854.02', formula: 'loan.apr', given: { financed: 200_000, instalment: 1854.0247200054619, months: 180 }, expect: 0.075, within: 1e-9, source: 'NumPy 1.3 manual, function pmt, printed, the other way round' },
  // 1,010 / 1,000 = 1.01 in a month, twelve times that in a year
  { name: '1,000 repaid by 1,010 after a month', formula: 'loan.apr', given: { financed: 1000, instalment: 1010, months: 1 }, expect: 0.12, within: 1e-9, source: arithmetic },
  { name: '1,200 repaid by 12 times 100 costs nothing', formula: 'loan.apr', given: { financed: 1200, instalment: 100, months: 12 }, expect: 0, within: 1e-9, source: arithmetic },
];

const ownership: WorkedCase[] = [
  { name: '23 % of a list price of 150,000', formula: 'resale.amount', given: { price: 150_000, share: 0.23 }, expect: 34_500, within: 1e-6, source: `${a329}, inputs printed` },
  { name: '23 % of a list price of 110,000', formula: 'resale.amount', given: { price: 110_000, share: 0.23 }, expect: 25_300, within: 1e-6, source: older },
  { name: '37 % of 75,000', formula: 'resale.amount', given: { price: 75_000, share: 0.37 }, expect: 27_750, within: 1e-6, source: grower },
  // (75,000 − 27,750) / 10
  { name: '75,000 that end as 27,750 after ten years', formula: 'own.depreciation', given: { price: 75_000, endValue: 27_750, years: 10 }, expect: 4725, within: 1e-6, source: `${grower}; the years are ours to divide by` },
  // 68,200 in all, as printed; / 15
  { name: '93,500 that end as 25,300 after 15 years', formula: 'own.depreciation', given: { price: 93_500, endValue: 25_300, years: 15 }, expect: 4546.667, within: 0.001, source: `${older} as the loss in all` },
  { name: '13,000 that end as 1,000 after ten years', formula: 'own.depreciation', given: { price: 13_000, endValue: 1000, years: 10 }, expect: 1200, within: 1e-9, source: 'manual of a mathematics program, straight-line depreciation, printed' },
  // 85 % and 36 % of 100,000, ten years
  { name: 'a list price of 100,000 by the Illinois rule', formula: 'own.depreciation', given: { price: 85_000, endValue: 36_000, years: 10 }, expect: 4900, within: 1e-9, source: `${farmdoc} as shares; the list price is ours` },
  // 95,500 × 0.11682954 + 34,500 × 0.08
  { name: '130,000 that end as 34,500 after 15 years, at 8 %', formula: 'own.capital-recovery', given: { price: 130_000, endValue: 34_500, rate: 0.08, years: 15 }, expect: 13_917.22, within: 0.01, source: `${a329}, inputs printed; the sum is ours` },
  { name: '160,000 that end as 35,391 after 8 years, at 5.5 %', formula: 'own.capital-recovery', given: { price: 160_000, endValue: 35_391, rate: 0.055, years: 8 }, expect: 21_618, within: 1, source: `${calculator}; its rate is not shown and was found from it` },
  { name: '100,000 that end as a fifth after 15 years, at 10 %', formula: 'own.capital-recovery', given: { price: 100_000, endValue: 20_000, rate: 0.1, years: 15 }, expect: 12_517.9, within: 0.005, source: 'Philippine board examination in civil engineering, problem 69 of a collection, printed' },
  // The problem rounds the factor to 0.149
  { name: '50,000 that end as a tenth after ten years, at 8 %', formula: 'own.capital-recovery', given: { price: 50_000, endValue: 5000, rate: 0.08, years: 10 }, expect: 7105, within: 2, source: 'Philippine board examination in civil engineering, 2016, problem 68 of a collection, printed from a rounded factor' },
  // (85,000 − 36,000) / 10
  { name: 'without interest only the loss is left', formula: 'own.capital-recovery', given: { price: 85_000, endValue: 36_000, rate: 0, years: 10 }, expect: 4900, within: 1e-6, source: arithmetic },
  // 1,000 × 1.07 after a year
  { name: '1,000 that end as nothing after a year, at 7 %', formula: 'own.capital-recovery', given: { price: 1000, endValue: 0, rate: 0.07, years: 1 }, expect: 1070, within: 1e-6, source: arithmetic },
  // 1 % of (160,000 + 35,391) / 2 = 976.96
  { name: 'a power unit of 160,000 that ends as 35,391', formula: 'own.housing-cost', given: { price: 160_000, endValue: 35_391, share: 0.01 }, expect: 977, within: 0.5, source: calculator },
  // 1 % of (32,000 + 11,852) / 2 = 219.26
  { name: 'an implement of 32,000 that ends as 11,852', formula: 'own.housing-cost', given: { price: 32_000, endValue: 11_852, share: 0.01 }, expect: 219, within: 0.5, source: calculator },
  // 1 % of 164,500 / 2
  { name: '130,000 that end as 34,500', formula: 'own.housing-cost', given: { price: 130_000, endValue: 34_500, share: 0.01 }, expect: 822.5, within: 1e-6, source: `${a329}, inputs printed; the sum is ours` },
  { name: 'ownership a year', formula: 'own.sum', given: { capital: 21_618, housing: 977 }, expect: 22_595, within: 0.001, source: calculator },
  { name: 'operation a year, which it rounds otherwise', formula: 'own.sum', given: { repairs: 6014, fuel: 10_360, labour: 5005 }, expect: 21_380, within: 1, source: calculator },
  { name: 'ownership and operation', formula: 'own.sum', given: { ownership: 22_595, operating: 21_380 }, expect: 43_974, within: 1, source: calculator },
  { name: 'fuel that lies 35 % above 15.71', formula: 'own.spread', given: { cost: 15.71, multiple: 1.35 }, expect: 21.21, within: 0.005, source: `${grower} for the fuel; Iowa State Extension A3-27 for the 35 %` },
  { name: 'repairs of 6,014 that come out as half', formula: 'own.spread', given: { cost: 6014, multiple: 0.5 }, expect: 3007, within: 1e-9, source: `${calculator} for the repairs; the half is common practice, no source` },
  // A loan at the rate of one's own money costs no more than that, and what is paid back early is paid back.
  { name: '1,000 repaid by 1,010 after a month where money brings 12 %', formula: 'own.loan', given: { worth: 1000, rest: 0, annualRate: 0.12, months: 1, financed: 1000 }, expect: 0, within: 1e-9, source: arithmetic },
  // 500 + 606 / 1.01 − 1,000
  { name: 'half repaid, 606 left after a month where money brings 12 %', formula: 'own.loan', given: { worth: 500, rest: 606, annualRate: 0.12, months: 1, financed: 1000 }, expect: 100, within: 1e-9, source: arithmetic },
  { name: '65 hp, each hour', formula: 'own.sum', given: { overhead: 14, fuel: 4.7, labour: 14.85 }, expect: 33.55, within: 0.005, source: farmdoc },
  { name: '95 hp, each hour', formula: 'own.sum', given: { overhead: 20.2, fuel: 6.5, labour: 14.85 }, expect: 41.55, within: 0.005, source: farmdoc },
  { name: '105 hp, each hour', formula: 'own.sum', given: { overhead: 21.7, fuel: 7.6, labour: 14.85 }, expect: 44.15, within: 0.005, source: farmdoc },
  { name: '20,000 of repairs over 6,000 hours', formula: 'own.per-hour', given: { yearly: 20_000, hours: 6000 }, expect: 3.33, within: 0.005, source: grower },
  // 4,900 / 300
  { name: 'a loss of 4,900 a year over 300 hours', formula: 'own.per-hour', given: { yearly: 4900, hours: 300 }, expect: 16.33, within: 0.005, source: `${farmdoc} as years and hours; the list price is ours` },
  { name: 'a wage of 13.50', formula: 'own.labour', given: { wage: 13.5, factor: 1.1 }, expect: 14.85, within: 0.005, source: farmdoc },
  // 16.00 × 1.10
  { name: 'a wage of 16.00', formula: 'own.labour', given: { wage: 16, factor: 1.1 }, expect: 17.6, within: 0.001, source: 'University of Illinois Extension, new machinery cost estimates, inputs printed; the sum is ours' },
];

const fresh = { hoursFrom: 0, rf2: 2 };
const twoWheel = { ...fresh, rf1: 0.007 };
const fourWheel = { ...fresh, rf1: 0.003 };

const running: WorkedCase[] = [
  // 0.007 × 1²
  { name: 'two driven wheels, 1,000 hours', formula: 'own.repairs', given: { ...twoWheel, list: 1, hoursTo: 1000 }, expect: 0.01, within: 0.005, source: table3 },
  // 0.007 × 3² = 0.063
  { name: 'two driven wheels, 3,000 hours', formula: 'own.repairs', given: { ...twoWheel, list: 1, hoursTo: 3000 }, expect: 0.06, within: 0.005, source: table3 },
  // 0.007 × 6² = 0.252
  { name: 'two driven wheels, 6,000 hours', formula: 'own.repairs', given: { ...twoWheel, list: 1, hoursTo: 6000 }, expect: 0.25, within: 0.005, source: table3 },
  { name: 'two driven wheels, 6,000 hours, by the equation', formula: 'own.repairs', given: { ...twoWheel, list: 1, hoursTo: 6000 }, expect: 0.252, within: 0.0005, source: 'ASABE D497, RF1 and RF2 second-hand; the sum is above' },
  // 0.007 × 10²
  { name: 'two driven wheels, 10,000 hours', formula: 'own.repairs', given: { ...twoWheel, list: 1, hoursTo: 10_000 }, expect: 0.7, within: 0.005, source: table3 },
  // A quarter of 80,000, where the equation gives 25.2 %
  { name: 'a list price of 80,000, two driven wheels, 6,000 hours', formula: 'own.repairs', given: { ...twoWheel, list: 80_000, hoursTo: 6000 }, expect: 20_000, within: 400, source: `${grower} from a rounded share` },
  // 0.003 × 4² = 0.048
  { name: 'four driven wheels, 4,000 hours', formula: 'own.repairs', given: { ...fourWheel, list: 1, hoursTo: 4000 }, expect: 0.05, within: 0.005, source: table3 },
  // 0.003 × 6² = 0.108
  { name: 'four driven wheels, 6,000 hours', formula: 'own.repairs', given: { ...fourWheel, list: 1, hoursTo: 6000 }, expect: 0.11, within: 0.005, source: table3 },
  // 0.003 × 10²
  { name: 'four driven wheels, 10,000 hours', formula: 'own.repairs', given: { ...fourWheel, list: 1, hoursTo: 10_000 }, expect: 0.3, within: 0.005, source: table3 },
  // 0.003 × 12²
  { name: 'four driven wheels, 12,000 hours', formula: 'own.repairs', given: { ...fourWheel, list: 1, hoursTo: 12_000 }, expect: 0.432, within: 0.0005, source: 'Calcante and others, Journal of Agricultural Engineering 44 (2013), abstract, by the US model, printed' },
  // 0.003 × 20,000 × (1.7² − 1²) = 60 × 1.89
  { name: 'a list price of 20,000, from 1,000 to 1,700 hours', formula: 'own.repairs', given: { ...fourWheel, list: 20_000, hoursFrom: 1000, hoursTo: 1700 }, expect: 113.4, within: 0.001, source: 'ASABE D497, RF1 and RF2 second-hand; inputs ours' },
  { name: 'a diesel of 105 hp', formula: 'own.fuel', given: { power: '105 hp', perEnergy: '0.044 gal/(hp·h)' }, expect: '4.62 gal/h', within: 0.005, source: grower },
  // 200 / 17
  { name: '200 hp at 17 hp·h a gallon', formula: 'own.fuel', given: { power: '200 hp', perEnergy: '0.0588235294 gal/(hp·h)' }, expect: '11.76 gal/h', within: 0.005, source: 'professor of the Nebraska test laboratory in Farm Industry News, printed' },
  // 200 / 18
  { name: '200 hp at 18 hp·h a gallon', formula: 'own.fuel', given: { power: '200 hp', perEnergy: '0.0555555556 gal/(hp·h)' }, expect: '11.11 gal/h', within: 0.005, source: 'professor of the Nebraska test laboratory in Farm Industry News, printed' },
  // 22 × 0.06
  { name: 'a petrol engine of 22 hp', formula: 'own.fuel', given: { power: '22 hp', perEnergy: '0.06 gal/(hp·h)' }, expect: '1.32 gal/h', within: 0.001, source: `${a329}, factor second-hand; the power is ours` },
  { name: '4.62 gallons an hour at 3.40', formula: 'own.fuel-cost', given: { use: '4.62 gal/h', price: 3.4 }, expect: 15.71, within: 0.005, source: grower },
  // 1,300 in 500 hours
  { name: '0.65 gallons an hour at 4.00', formula: 'own.fuel-cost', given: { use: '0.65 gal/h', price: 4 }, expect: 2.6, within: 0.001, source: 'professor of the Nebraska test laboratory in Farm Industry News, printed as 1,300 for 500 hours' },
  // 3.785411784 L are a gallon
  { name: '3.785411784 L an hour at 3.50 a gallon', formula: 'own.fuel-cost', given: { use: '3.785411784 L/h', price: 3.5 }, expect: 3.5, within: 1e-9, source: 'NIST SP 811 (2008) appendix B.8, from memory' },
  { name: '15 % of 15.71', formula: 'own.lubricants', given: { fuelCost: 15.71, share: 0.15 }, expect: 2.36, within: 0.005, source: grower },
];

const days: WorkedCase[] = [
  // 0.8 × √(2 / 8)
  { name: '0.8 m/s² for two hours', formula: 'vibration.daily', given: { acceleration: '0.8 m/s2', time: '2 h' }, expect: '0.4 m/s2', within: 0.0005, source: law },
  { name: 'eight hours at the action value are the action value', formula: 'vibration.daily', given: { acceleration: '0.5 m/s2', time: '8 h' }, expect: '0.5 m/s2', within: 1e-9, source: '2002/44/EC, printed: standardised to eight hours' },
  // 0.6 × √(3 / 8) = 0.6 × 0.612372
  { name: '0.6 m/s² for three hours', formula: 'vibration.daily', given: { acceleration: '0.6 m/s2', time: '3 h' }, expect: '0.367423 m/s2', within: 0.000001, source: 'United Kingdom, Control of Vibration at Work Regulations 2005, schedule 2, formula; inputs ours' },
  // 8 × (0.5 / 0.8)²
  { name: '0.8 m/s² to the action value', formula: 'vibration.time-to', given: { acceleration: '0.8 m/s2', limit: '0.5 m/s2' }, expect: '3.125 h', within: 0.0005, source: law },
  // 8 × (1.15 / 0.8)²
  { name: '0.8 m/s² to the limit', formula: 'vibration.time-to', given: { acceleration: '0.8 m/s2', limit: '1.15 m/s2' }, expect: '16.53 h', within: 0.005, source: law },
  ...([[85, '8 h'], [88, '4 h'], [91, '2 h'], [94, '60 min'], [97, '30 min'], [100, '15 min']] as const).map(([level, expected]) => (
    { name: `${level} dB(A) by NIOSH`, formula: 'noise.time', given: { level, action: 85, exchange: 3 }, expect: expected, within: 1e-6, source: niosh } as const
  )),
  ...([[80, '32 h', 0.05], [84, '18.4 h', 0.05], [87, '12.1 h', 0.05], [92, '6.1 h', 0.05], [95, '4 h', 0.05], [102, '1.5 h', 0.05], [106, '0.87 h', 0.005], [120, '0.125 h', 0.0005]] as const)
    .map(([level, expected, within]) => ({ name: `${level} dB(A) by OSHA`, formula: 'noise.time', given: { level, action: 90, exchange: 5 }, expect: expected, within, source: osha } as const)),
  // Its table steps by tenths of a decade: 88 dB(A) has 6.4 h there where halving every 3 dB gives 6.35.
  ...([[90, '4.0 h', 0.05], [93, '2.0 h', 0.05], [100, '0.40 h', 0.005]] as const)
    .map(([level, expected, within]) => ({ name: `${level} dB(A) in Canada`, formula: 'noise.time', given: { level, action: 87, exchange: 3 }, expect: expected, within, source: canada } as const)),
];

/** Loans, owning and running a machine, and a day's vibration and noise. */
export const moneyAndOperator: WorkedCase[] = [...loans, ...ownership, ...running, ...days];
