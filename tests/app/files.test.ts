import { describe, expect, it } from 'vitest';
import { fileName } from '../../app/effects/download';
import { jobFileName, MOST_BYTES, openFile } from '../../app/effects/files';
import { createAppStore } from '../../app/store/store';
import { newJob, writeJob } from '../../src/flow';
import { setAt } from '../../src/job/edits';

const onBoard = () => createAppStore(newJob('On the board'), 'first');
const file = (text: string, name = 'bar.job.json') => new File([text], name);

describe('opening a job file', () => {
  it('puts the job on the board, as a document of its own, and clears what was complained of before', async () => {
    const store = onBoard();
    const job = setAt(newJob('Bar'), '/unit/height', 1050);
    await openFile(store, file('{'));
    await openFile(store, file(writeJob(job)));
    expect(store.getState().document).toEqual(job);
    expect(store.getState().documentId).not.toBe('first');
    expect(store.getState().notice).toBeNull();
  });

  it.each([
    ['is no JSON', '{ "format": ', 'not JSON'],
    ['is no job', '[1, 2]', 'no Counterwright job'],
    ['has a height below nothing', writeJob(setAt(newJob('Bar'), '/unit/height', -5)), '/unit/height: '],
    [
      'names stock that is not there',
      writeJob(setAt(newJob('Bar'), '/unit/elements/frame/timber', 'ash')),
      '/unit/elements/frame/timber: ',
    ],
  ])('leaves the job on the board untouched when the file %s, and says where', async (_what, text, said) => {
    const store = onBoard();
    store.getState().edit('Height', (job) => setAt(job, '/unit/height', 1000));
    const { document, documentId, past } = store.getState();
    await openFile(store, file(text, '<b>x</b>.json'));
    const now = store.getState();
    expect(now.document).toBe(document);
    expect(now.documentId).toBe(documentId);
    expect(now.past).toBe(past);
    expect(now.notice?.tone).toBe('trouble');
    expect(now.notice?.text).toContain('<b>x</b>.json');
    expect(now.notice?.lines?.join('\n')).toContain(said);
  });

  it('does not read a file that is far too big', async () => {
    const store = onBoard();
    const big = file('{}');
    let wasRead = false;
    Object.defineProperty(big, 'size', { value: MOST_BYTES + 1 });
    Object.defineProperty(big, 'text', {
      value: async () => {
        wasRead = true;
        return '{}';
      },
    });
    await openFile(store, big);
    expect(wasRead).toBe(false);
    expect(store.getState().notice?.tone).toBe('trouble');
  });

  it('says so when the browser can’t read the file', async () => {
    const store = onBoard();
    const gone = file('{}');
    Object.defineProperty(gone, 'text', { value: () => Promise.reject(new DOMException('gone', 'NotFoundError')) });
    await openFile(store, gone);
    expect(store.getState().notice?.lines).toEqual(['The browser could not read the file.']);
  });
});

describe('names of files', () => {
  it.each([
    ['Larkmoor Hall: café servery', 'larkmoor-hall-cafe-servery.csv'],
    ['naïve', 'naive.csv'],
    ['../../etc/passwd', 'etc-passwd.csv'],
    ['<script>', 'script.csv'],
    ['  ', 'job.csv'],
    ['Тумба 2', 'тумба-2.csv'],
  ])('of “%s” is %s', (title, name) => {
    expect(fileName(title, 'csv')).toBe(name);
  });

  it('of a job ends as a job file does', () => {
    expect(jobFileName(newJob('Long bar'))).toBe('long-bar.job.json');
  });
});
