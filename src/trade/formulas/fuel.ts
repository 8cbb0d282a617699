import { inUnit, type Quantity } from '../../units/quantity.ts';
import { term, type Working } from '../working.ts';

/**
 * Fuel a tractor takes, averaged over its year and its jobs. Published values lie up to 35 % to either side.
 *
 * @param power      most it gives at the PTO [W], > 0
 * @param perEnergy  fuel for each unit of that power and time [m³/J], > 0
 * @returns fuel [m³/s], with its working
 * @see rules `own.fuel`, `own.fuel.diesel` and `own.fuel.petrol`
 */
export const fuelUse = (power: Quantity<'power'>, perEnergy: Quantity<'fuelPerEnergy'>): Working => ({
  formula: 'own.fuel',
  inputs: { power: term('power', power), perEnergy: term('fuelPerEnergy', perEnergy) },
  result: term('flow', power * perEnergy),
});

/**
 * Cost of the fuel of an hour.
 *
 * @param use    fuel [m³/s], ≥ 0
 * @param price  of a US gallon, in the dealer's currency, as `own.fuel-price` gives it
 * @returns cost of an hour in the dealer's currency, with its working
 * @see rules `own.fuel-cost` and `own.fuel-price`
 */
export const fuelCost = (use: Quantity<'flow'>, price: number): Working => ({
  formula: 'own.fuel-cost',
  inputs: { use: term('flow', use), price: term('dealer-currency', price) },
  result: term('dealer-currency', inUnit('flow', use, 'gal/h') * price),
});

/**
 * Oil and filters, as a share of the fuel.
 *
 * @param fuel   cost of the fuel of an hour, in the dealer's currency
 * @param share  of it [ratio]
 * @returns cost of an hour in the dealer's currency, with its working
 * @see rules `own.lubricants` and `own.lubricant`
 */
export const lubricants = (fuel: number, share: number): Working => ({
  formula: 'own.lubricants',
  inputs: { fuelCost: term('dealer-currency', fuel), share: term('ratio', share) },
  result: term('dealer-currency', fuel * share),
});
