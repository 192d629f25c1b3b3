import { expect } from 'chai';
import '../../widget/index.js';
import { pastedText, textOfHtml } from '../../widget/pasted.js';

const TABLE =
  '<html><head><style>td{color:red}</style><title>x</title></head><body><!-- a > b --><table><tr><th>Item</th><th>Weight</th></tr>' +
  '<tr><td>Pot<br>1&frac12; L</td><td>120&nbsp;g</td></tr><tr><td></td><td>84 g</td></tr></table><p>Gas &amp; lighter</p></body></html>';

describe('a paste', () => {
  it('keeps the cells of a table', () => {
    expect(textOfHtml(TABLE)).to.equal('Item\tWeight\nPot 1½ L\t120\u00a0g\n84 g\nGas & lighter');
  });

  it('takes the plain text where that has its cells, or where there is no table', () => {
    expect(pastedText('Pot\t120 g', TABLE)).to.equal('Pot\t120 g');
    expect(pastedText('Pot 1 L', '<ul><li>Pot 1 L</li></ul>')).to.equal('Pot 1 L');
    expect(pastedText('Pot 120 g', TABLE)).to.equal(textOfHtml(TABLE));
  });

  it('makes lines of items and paragraphs, and never loses what is no HTML', () => {
    expect(textOfHtml('<ul><li>Pot 1&#32;L</li><li>Mug &#x34;50 ml</li></ul>stove')).to.equal(
      'Pot 1 L\nMug 450 ml\nstove',
    );
    expect(textOfHtml('a < b &unknown; c')).to.equal('a');
    expect(textOfHtml('&unknown; &#0; c')).to.equal('&unknown; &#0; c');
    expect(textOfHtml('')).to.equal('');
  });

  it('goes into the list at the caret, and runs nothing', async () => {
    const element = document.createElement('brimwise-check');
    document.body.append(element);
    await element.updateComplete;
    const area = element.renderRoot.querySelector('textarea')!;
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', 'Pot 1 L 120 g');
    clipboardData.setData(
      'text/html',
      '<table><tr><td>Pot 1 L<img src=x onerror="window.ran=1"></td><td>120 g</td></tr></table>',
    );
    area.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
    await element.updateComplete;
    expect(element.draft.text).to.equal('Pot 1 L\t120 g');
    expect('ran' in window).to.equal(false);
    element.remove();
  });
});
