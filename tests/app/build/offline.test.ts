import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contentVersion, filesBelow } from '../../../app/build/offline.ts';

describe('the version of the offline copy', () => {
  const files = [
    { address: 'index.html', content: '<p>' },
    { address: 'a.js', content: 'let a' },
  ];

  it('does not depend on the order of the files', () => {
    expect(contentVersion([...files].reverse())).toBe(contentVersion(files));
  });

  it('changes with a content, an address, a file more, and a file less', () => {
    const others = [
      [{ address: 'index.html', content: '<p> ' }, files[1]],
      [{ address: 'index.htm', content: '<p>' }, files[1]],
      [...files, { address: 'b.js', content: '' }],
      [files[0]],
      [
        { address: 'index.html', content: 'let a' },
        { address: 'a.js', content: '<p>' },
      ],
    ];
    const versions = new Set([files, ...others].map(contentVersion));
    expect(versions.size).toBe(6);
  });
});

describe('the public files', () => {
  it('are found in every folder, with forward slashes; a missing folder holds none', () => {
    const folder = mkdtempSync(join(tmpdir(), 'public-'));
    try {
      mkdirSync(join(folder, 'examples'));
      writeFileSync(join(folder, 'icon.svg'), '<svg/>');
      writeFileSync(join(folder, 'examples', 'bar.job.json'), '{}');
      const addresses = filesBelow(folder).map(({ address }) => address);
      expect(addresses.sort()).toEqual(['examples/bar.job.json', 'icon.svg']);
      expect(filesBelow(join(folder, 'absent'))).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
