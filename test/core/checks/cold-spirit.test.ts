import { describe, expect, it } from 'vitest';
import { coldSpirit } from '../../../core/checks/cold-spirit.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const spirit = item('stove', { stoveType: stated('alcohol') });
const pot = item('pot', { capacitiesMl: [stated(2000)], lid: stated(true) });

describe('alcohol in the cold, common practice, no source', () => {
  it('costs you from −5 °C down', () => {
    expect(findingOf(coldSpirit, factsOf({ lowC: -5 }, [spirit]))).toMatchObject({
      grade: 'costs-you',
      key: 'cold',
      message: 'An alcohol stove at −5\u00a0°C lights slowly and heats slowly.',
      margin: '−5\u00a0°C, alcohol',
      fix: expect.stringContaining('screen the burner'),
    });
    expect(findingsOf(coldSpirit, factsOf({ lowC: -4.9 }, [spirit]))).toEqual([]);
  });

  it('gives the price of melting snow, and calls it slow, not impossible', () => {
    const finding = findingOf(coldSpirit, factsOf({ waterFrom: 'snow', lowC: 0, wind: 'calm' }, [pot, spirit]));
    expect(finding).toMatchObject({ key: 'snow-figure', margin: 'snow on alcohol' });
    expect(finding.message).toMatch(
      /^Melting snow on alcohol takes [\d–,]+\u00a0min and [\d–,]+\u00a0g a day; it is slow, not impossible\.$/,
    );
    expect(findingOf(coldSpirit, factsOf({ waterFrom: 'snow', lowC: 0 }, [spirit]))).toMatchObject({ key: 'snow' });
    expect(findingOf(coldSpirit, factsOf({ waterFrom: 'either', lowC: 0 }, [spirit])).message).toBe(
      'If snow is the water, alcohol melts it slowly and with much fuel; it is not impossible.',
    );
    expect(
      findingOf(coldSpirit, factsOf({ waterFrom: 'either', lowC: 0, wind: 'calm' }, [pot, spirit])).message,
    ).toMatch(/^If snow is the water, alcohol melts it in [\d–,]+\u00a0min and [\d–,]+\u00a0g a day: slow, /);
  });

  it('is silent where snow is only assumed, on another stove, without a stove, and on a typed pot', () => {
    expect(findingsOf(coldSpirit, factsOf({ season: 'winter', lowC: 0 }, [spirit]))).toEqual([]);
    expect(findingsOf(coldSpirit, factsOf({ lowC: -20 }, [item('stove', { stoveType: stated('gas') })]))).toEqual([]);
    expect(findingsOf(coldSpirit, factsOf({ lowC: -20 }, [pot]))).toEqual([]);
    expect(findingsOf(coldSpirit, factsOfPot({ capacity: 700 }, { lowC: -20 }, { type: 'alcohol' }))).toEqual([]);
  });

  it('says when the temperature is a guess', () => {
    expect(findingOf(coldSpirit, factsOf({ season: 'winter' }, [spirit])).assumptions.map(({ what }) => what)).toEqual([
      'the lowest temperature',
    ]);
  });
});
