// Writes the built app as coatwait.zip, ready to unpack on any static https host: at its root or in a folder.
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';

const BUILT = 'dist';
const files = {};
for (const name of readdirSync(BUILT, { recursive: true, encoding: 'utf8' })) {
  const path = join(BUILT, name);
  if (statSync(path).isFile() && !name.startsWith('.vite'))
    files[name.replaceAll('\\', '/')] = readFileSync(path);
}
const zip = zipSync(files, { level: 9 });
writeFileSync('coatwait.zip', zip);
console.log(
  `coatwait.zip: ${Object.keys(files).length} files, ${Math.round(zip.length / 1000)} kB. Unpack it on any static https host.`,
);
