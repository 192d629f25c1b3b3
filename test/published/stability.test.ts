import { describe } from 'vitest';
import {
  hungMetacentricMm,
  liquidCentroid,
  spillAngleDeg,
  supportRadiusMm,
  tipAngleDeg,
  virtualRiseMm,
} from '../../core/physics/stability.js';
import { column, compare } from './figure.js';
import { CENTROID, DERRETT, REED, SPILL, SUPPORTS, TIP } from './figures/stability.js';

const R = 70;
const H = 100;
const EDGE = 40;

describe('the free surface', () => {
  // A tank is as long as the example says; our law is the round one. A round tank of the same I/V stands in for it:
  // r⁴π/4 = l b³/12 and V = displacement/density.
  compare(REED, (row) => {
    const inertia = (column(row, 'l/m') * column(row, 'b/m') ** 3) / 12;
    const volume = column(row, 'displacement/t') / column(row, 'density/(t/m³)');
    const radius = ((4 * inertia) / Math.PI) ** 0.25;
    const depth = volume / (Math.PI * radius ** 2);
    // Metres serve for millimetres: the law is one of ratios.
    return virtualRiseMm(radius, depth);
  });
  compare(DERRETT, (row) => virtualRiseMm(column(row, 'r/mm'), column(row, 'h/mm')));
  compare(DERRETT, (row) => {
    const [radiusMm, fillMm] = [column(row, 'r/mm'), column(row, 'h/mm')];
    return 200 - fillMm / 2 - hungMetacentricMm({ earMm: 200, fillMm, radiusMm });
  });
});

describe('a tilted cylinder', () => {
  compare(CENTROID, (row) => {
    const { xMm, zMm } = liquidCentroid(column(row, 'r/mm'), column(row, 'h/mm'), column(row, 'tilt/°'));
    return row.at.axis === 'x' ? xMm : zMm;
  });

  // Frozen: all the mass in a solid whose centre stays at h/2. Linear: the centre raised by r²/(4h) once and for all.
  compare(TIP, (row) => {
    const standMm = column(row, 'stand/mm');
    const solid = (potCentreMm: number): number =>
      tipAngleDeg({ radiusMm: R, fillMm: 0, edgeMm: EDGE, standMm, potMassKg: 1, potCentreMm });
    if (row.at.water === 'frozen') return solid(H / 2);
    if (row.at.water === 'linear') return solid(H / 2 + virtualRiseMm(R, H));
    return tipAngleDeg({ radiusMm: R, fillMm: H, edgeMm: EDGE, standMm });
  });

  compare(SPILL, (row) =>
    spillAngleDeg({ rimMm: column(row, 'd/mm'), heightMm: column(row, 'H/mm'), fillMm: column(row, 'h/mm') }),
  );
  compare(SUPPORTS, (row) => supportRadiusMm(column(row, 'R/mm'), column(row, 'n')));
});
