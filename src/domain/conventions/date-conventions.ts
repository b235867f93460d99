import { defaultSlack } from '../dates/slack.ts';
import { convention } from './convention.ts';

const readWhenTaken =
  'words are read by it once, when they are taken in; edit the date of a dating whose words mean something else';

/** How dates and phrases are read where the words leave a choice. */
export const dateConventions = [
  convention('date.slack.day', defaultSlack.day, 'd', 'convention', 'Days around an approximate day, on both sides.'),
  convention(
    'date.slack.month',
    defaultSlack.month,
    'months',
    'recommendation of a museum cataloguing standard',
    'Months around an approximate month.',
  ),
  convention(
    'date.slack.season',
    defaultSlack.season,
    'months',
    'near a recommendation of a museum cataloguing standard',
    'Months around an approximate season, quarter, four-month term or half-year.',
  ),
  convention(
    'date.slack.year',
    defaultSlack.year,
    'y',
    'common practice: a cataloguing handbook and two museum guides; the Object ID guide allows 10',
    'Years around an approximate year.',
  ),
  convention('date.slack.decade', defaultSlack.decade, 'y', 'convention', 'Years around an approximate decade.'),
  convention('date.slack.century', defaultSlack.century, 'y', 'convention', 'Years around an approximate century.'),
  convention(
    'date.uncertainFactor',
    defaultSlack.uncertainFactor,
    'factor',
    'convention',
    'What a question mark widens, as a part of what "approximately" would: 0 leaves the days alone.',
  ),
  convention<'date.openSetBound', number | null>(
    'date.openSetBound',
    defaultSlack.openSetBound ?? null,
    'y',
    'Object ID guide, which closes such dates after 100 years',
    'Years that close the open side of "before" and "after"; null leaves it open.',
  ),
  convention(
    'date.winter',
    'JAN-FEB OR DEC-FEB',
    '',
    'convention',
    'Winter of a year is January and February of it, or December of it to February of the next.',
  ),
  convention(
    'date.reading',
    'BY EVENT',
    '',
    'convention',
    'An interval is one unknown day for what happens once, a whole span for what lived or ran.',
  ),
  convention(
    'phrase.cPrefix',
    { library: 'copyright', museum: 'circa' },
    '',
    'common practice',
    'What a "c" before a year means, by kind of catalogue.',
    readWhenTaken,
  ),
  convention(
    'phrase.beforeExcludes',
    true,
    '',
    'convention',
    '"Before 1770" and "after 1770" leave out 1770 itself.',
    readWhenTaken,
  ),
  convention('phrase.century', 'XX00-XX99', '', 'convention', 'Years of a century: the eighteenth is 1700 to 1799.'),
] as const;
