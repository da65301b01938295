import { expect, test } from 'vitest';
import { usualPlaces } from '../../generators/press/places.ts';

test('on Linux every folder of PATH is looked through, Chrome before Chromium before Edge', () => {
  const places = usualPlaces({ PATH: '/usr/local/bin:/usr/bin' }, 'linux');
  expect(places.slice(0, 2)).toEqual(['/usr/local/bin/google-chrome-stable', '/usr/bin/google-chrome-stable']);
  expect(places.indexOf('/usr/bin/google-chrome')).toBeLessThan(places.indexOf('/usr/local/bin/chromium'));
  expect(places.indexOf('/usr/bin/chromium')).toBeLessThan(places.indexOf('/usr/local/bin/microsoft-edge'));
});

test('relative folders of PATH are passed over: they would run whatever lies in the present folder', () => {
  expect(usualPlaces({ PATH: '.:bin::/usr/bin' }, 'linux').every((place) => place.startsWith('/'))).toBe(true);
});

test('on macOS applications for everyone come before those of the user', () => {
  const places = usualPlaces({ HOME: '/Users/ada' }, 'darwin');
  expect(places.slice(0, 2)).toEqual([
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Users/ada/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ]);
  expect(places).toContain('/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge');
});

test('on Windows both program folders and LOCALAPPDATA are looked through', () => {
  const env = {
    ProgramFiles: 'C:\\Program Files',
    'ProgramFiles(x86)': 'C:\\Program Files (x86)',
    LOCALAPPDATA: 'C:\\Users\\ada\\AppData\\Local',
  };
  const places = usualPlaces(env, 'win32');
  expect(places).toContain('C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe');
  expect(places).toContain('C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe');
  expect(places).toContain('C:\\Users\\ada\\AppData\\Local\\Google\\Chrome\\Application\\chrome.exe');
});

test('a variable that is not set gives no place', () => {
  expect(usualPlaces({}, 'win32')).toEqual([]);
});
