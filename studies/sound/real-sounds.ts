/**
 * Sounds that were really recorded, out of freely licensed packages of Debian 12: animals, weather, tools, places. No whistle and no clicker is
 * among them, by their names; the list was made before any detector heard them. They are close, short and
 * dense: seconds of one call after another, no field's mixture. `apt-get download PACKAGE` and `dpkg-deb -x PACKAGE_*.deb FOLDER` unpack them.
 */
export const REAL_SOUNDS: readonly { name: string; licence: string; files: RegExp }[] = [
  {
    name: 'tuxpaint-stamps-default',
    licence: 'GPL-2',
    // Not the spoken names of the pictures.
    files:
      /^usr\/share\/tuxpaint\/stamps\/(animals|naturalforces|vehicles|household|hobbies)\/(?!.*_desc).*\.ogg$/,
  },
  {
    name: 'qabcs-data',
    licence: 'GPL-3+',
    files:
      /^usr\/share\/qabcs\/abcs\/all\/noises\/(adjutant|albatross|bicycle|bird|booby|calf|camera_lens|clock|cow|crane|crow|deer|dog|duck|eagle-owl|emu|excavator|fish|flamingo|foal|frog|goose|grasshopper|guinea_fowl|hamster|hedgehog|heron|horse|hyena|iora|kite|lynx|moose|otter|owl|pelican|pheasant|quail|quetzal|rooster|sheep|sparrow|squirrel|stork|tractor|train|vulture|wagon|wolf|wood_grouse|zipper)\.ogg$/,
  },
  {
    name: 'scratch',
    licence: 'CC-BY-SA-3.0 and others',
    files: /^usr\/share\/scratch\/Media\/Sounds\/Animal\//,
  },
  {
    name: 'wesnoth-1.16-data',
    licence: 'GPL-2+',
    files:
      /^usr\/share\/games\/wesnoth\/1\.16\/data\/core\/sounds\/ambient\/(birds\d|morning|night|campfire)\.ogg$/,
  },
  {
    name: 'flare-game',
    licence: 'CC-BY-SA-3.0+',
    files:
      /^usr\/share\/games\/flare\/mods\/\w+\/soundfx\/environment\/(forest_owl_loop|river_loop|bird_twitter_loop|open_fire_loop|wind_loop|raven_loop|rain)\.ogg$/,
  },
  {
    name: 'lugaru-data',
    licence: 'GPL-2+ and CC-BY-SA',
    files: /^usr\/share\/games\/lugaru\/Sounds\/(Bark\w*|DesertAmbient)\.ogg$/,
  },
];
