// Expands recurrence rules by the npm package rrule, for tst_reference_rules. Lines as for expand_rules.py, floating time only.
// The packages of package.json are looked for in the folder given as the first argument.
'use strict';
const fs = require('fs');
const { createRequire } = require('module');
const { RRule } = createRequire(process.argv[2] + '/')('rrule');

function date(text) {
    const part = (from, length) => Number(text.slice(from, from + length)) || 0;
    return new Date(Date.UTC(part(0, 4), part(4, 2) - 1, part(6, 2), part(9, 2), part(11, 2), part(13, 2)));
}

function wall(instant) {
    return instant.toISOString().replace(/[-:]/g, '').slice(0, 15);
}

for (const line of fs.readFileSync(0, 'utf8').trim().split('\n')) {
    const [, start, rule, first, last] = line.split(' ');
    const options = RRule.parseString(rule);
    options.dtstart = date(start);
    const end = new Date(date(last).getTime() + 86399000);
    console.log(new RRule(options).between(date(first), end, true).map(wall).join(','));
}
