/** A theme's colours, as they stand in `tokens.css`; the test compares the two and computes their contrast. */
export const THEMES = {
  sun: {
    paper: '#faf8ef',
    card: '#fffef9',
    ink: '#16201a',
    soft: '#3d4941',
    line: '#c9cbbb',
    edge: '#6e7566',
    sedge: '#1f5a3a',
    onSedge: '#fffef6',
    reed: '#6b5a1e',
    clay: '#88320e',
    water: '#17506f',
    wash: '#eef0df',
    grass: '#f3f3e2',
  },
  dusk: {
    paper: '#0f1512',
    card: '#161e19',
    ink: '#eef0e6',
    soft: '#c3cbc0',
    line: '#3a453d',
    edge: '#7f8b81',
    sedge: '#93d3aa',
    onSedge: '#0d1a12',
    reed: '#dcc988',
    clay: '#f3a27b',
    water: '#8fc6e6',
    wash: '#1d2721',
    grass: '#141b16',
  },
} as const;

export type ThemeName = keyof typeof THEMES;
/** What the handler chose: a theme, or the device's own wish. */
export type ThemeChoice = ThemeName | 'system';
