import { constant, type Expression, lookup, split } from '../calc/expression.ts';
import postedSpeed from './quantities/posted-speed.ts';
import tableGrade from './quantities/table-grade.ts';
import { rowsOf } from './rows.ts';
import type { FigureTable } from './shapes.ts';
import down3 from './tables/stopping-sight-down-3.ts';
import down6 from './tables/stopping-sight-down-6.ts';
import down9 from './tables/stopping-sight-down-9.ts';

/** The row of a table of stopping sight distances for the speed before the work. */
export const sightRow = (table: FigureTable<'speed', 'length'>): Expression => lookup(postedSpeed, rowsOf(table));

/** One distance up to a downgrade, itself included, and another beyond it. */
export const upToGrade = (percent: number, here: Expression, beyond: Expression): Expression =>
  split(tableGrade, constant(percent, '%'), here, beyond);

/** The distances for a downgrade. Beyond the last column there is no `table-grade`, and so no distance. */
export const sightDown = upToGrade(3, sightRow(down3), upToGrade(6, sightRow(down6), sightRow(down9)));
