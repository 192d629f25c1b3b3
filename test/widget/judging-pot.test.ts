import { expect } from 'chai';
import type { BrimwiseCheck, BrimwisePot, BrimwiseVerdict } from '../../widget/index.js';
import { judgeAtHand } from '../../widget/judging.js';
import '../../widget/index.js';

async function from<E extends HTMLElement = BrimwiseCheck>(html: string): Promise<E> {
  document.body.innerHTML = html;
  const element = document.body.firstElementChild as E;
  await (element as unknown as BrimwiseCheck).updateComplete;
  return element;
}

describe('what judges', () => {
  it('is the part for one pot where one pot is asked about, and the whole once a list is', async () => {
    const loaded = (part: string) =>
      performance.getEntriesByType('resource').some(({ name }) => new RegExp(`core/${part}\\.`).test(name));
    const verdict = await from<BrimwiseVerdict>(
      '<brimwise-verdict capacity="1.3 L" diameter="140"></brimwise-verdict>',
    );
    expect(verdict.report!.pots[0]!.capacityMl).to.equal(1300);
    const pot = await from<BrimwisePot>('<brimwise-pot capacity="38 fl oz"></brimwise-pot>');
    expect(pot.report!.pots[0]!.capacityMl).to.be.closeTo(1124, 1);
    expect([loaded('typed'), loaded('english'), judgeAtHand('list')]).to.deep.equal([true, false, null]);
    const [typed] = [judgeAtHand()];
    const list = await from('<brimwise-check>Pot 1.3 L, lid</brimwise-check>');
    expect(list.report!.reading.items.map(({ kind }) => kind)).to.deep.equal(['pot']);
    expect(judgeAtHand('list')).to.not.equal(typed);
    expect(judgeAtHand()).to.equal(judgeAtHand('list'));
  });
});
