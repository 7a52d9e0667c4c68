-- The orchard book, version 1.
--
-- A book is one SQLite file (application_id 0x50495057, "PIPW"; user_version = number of the last
-- migration). One table a kind of record. In every table
--   id    is the key inside this file, and what references hold. It means nothing outside;
--   uuid  is the record's name everywhere else (journal, archive, labels): 16 bytes, RFC 9562.
-- Texts are UTF-8 and never NULL: an empty text says nothing. Dates are civil days of the site,
-- year-month-day (ISO 8601). Words come from closed lists, and every list knows what is not known.
-- Flags are 0 or 1. Numbers are in the unit that the column's remark or name gives.
-- A reference that is NULL says nothing; one that is not leads to a record (checked at the end of
-- each change). Records are not deleted, they are voided with a reason; a row goes only when the
-- making of it is undone, and the journal still holds it then.

-- What the whole book says of itself.
CREATE TABLE book_facts (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- title of the book
    title TEXT NOT NULL DEFAULT '',
    -- whose breeding work it is
    owner TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;

-- An observer, taster or grower.
CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- name
    name TEXT NOT NULL DEFAULT '',
    -- initials, as on the sheets
    initials TEXT NOT NULL DEFAULT '',
    -- 1 if the person tastes
    tastes INTEGER NOT NULL CHECK (tastes IN (0, 1)),
    -- 1 if the person grows our wood elsewhere
    grows INTEGER NOT NULL CHECK (grows IN (0, 1)),
    -- where the person gardens
    place TEXT NOT NULL DEFAULT '',
    -- allergies, only if the person gave them
    health_notes TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;

-- A piece of ground with its own weather.
CREATE TABLE site (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- name of the site
    name TEXT NOT NULL DEFAULT '',
    -- degrees, north positive
    latitude REAL,
    -- degrees, east positive
    longitude REAL,
    -- metres above sea level
    elevation_m REAL,
    -- decides the crop year of a date
    hemisphere TEXT NOT NULL CHECK (hemisphere IN ('unknown', 'north', 'south')),
    -- name in the IANA time zone database
    time_zone TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;

-- A numbered row of a site.
CREATE TABLE trial_row (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the site it runs through
    site INTEGER NOT NULL REFERENCES site (id) DEFERRABLE INITIALLY DEFERRED,
    -- its number on the site, in walking order
    number INTEGER NOT NULL,
    -- what it is called, if not by its number
    name TEXT NOT NULL DEFAULT '',
    -- compass bearing from the zero stake, degrees
    bearing_deg REAL,
    -- which end the zero stake is at, in words
    zero_end TEXT NOT NULL DEFAULT '',
    -- metres from the zero stake to the end
    length_m REAL,
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX trial_row_by_site ON trial_row (site);

-- A place in a row.
CREATE TABLE position (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the row it is in
    row INTEGER NOT NULL REFERENCES trial_row (id) DEFERRABLE INITIALLY DEFERRED,
    -- its number counted from the zero stake
    ordinal INTEGER NOT NULL,
    -- tape distance from the zero stake, metres
    distance_m REAL,
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX position_by_row ON position (row);

-- A species, and how it differs from the others.
CREATE TABLE species (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- stable key of a shipped species; empty for the user's own
    key TEXT NOT NULL DEFAULT '',
    -- common name
    name TEXT NOT NULL DEFAULT '',
    -- botanical name
    latin TEXT NOT NULL DEFAULT '',
    -- usual number of chromosome sets
    ploidy INTEGER,
    -- whether its own pollen sets seed
    self_compatible TEXT NOT NULL CHECK (self_compatible IN ('unknown', 'no', 'yes')),
    -- how it gets from tree to prime
    ripening_path TEXT NOT NULL CHECK (ripening_path IN ('unknown', 'on_tree',
        'pick_then_chill', 'pick_then_ripen', 'cooked')),
    -- good seeds in a fruit, typical
    seeds_per_fruit REAL,
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;

-- A cross: seed parent x pollen parent in a year; its seedlings are a family.
CREATE TABLE cross_made (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the breeder's code of the cross
    code TEXT NOT NULL DEFAULT '',
    -- species of the family
    species INTEGER REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
    -- the mother
    seed_parent INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- the father, if known
    pollen_parent INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- how the pollen came
    pollination TEXT NOT NULL CHECK (pollination IN ('unknown', 'controlled', 'open', 'self')),
    -- year of the bloom
    crop_year INTEGER,
    -- how sure it had only the chosen pollen
    purity TEXT NOT NULL CHECK (purity IN ('unknown', 'emasculated_bagged', 'bagged',
        'tagged_only', 'open')),
    -- flowers pollinated
    flowers INTEGER,
    -- fruits set
    fruits_set INTEGER,
    -- seeds got
    seeds_got INTEGER,
    -- seeds sown
    seeds_sown INTEGER,
    -- seeds germinated
    germinated INTEGER,
    -- seedlings planted out
    planted INTEGER,
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX cross_made_by_species ON cross_made (species) WHERE species IS NOT NULL;
CREATE INDEX cross_made_by_seed_parent ON cross_made (seed_parent) WHERE seed_parent IS NOT NULL;
CREATE INDEX cross_made_by_pollen_parent ON cross_made (pollen_parent) WHERE pollen_parent IS NOT NULL;

-- A genetic individual: seedling, selection, cultivar or rootstock.
CREATE TABLE genotype (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the breeder's code, any pattern
    code TEXT NOT NULL DEFAULT '',
    -- name, once it has one
    name TEXT NOT NULL DEFAULT '',
    -- seedling, selection, cultivar or rootstock
    kind TEXT NOT NULL CHECK (kind IN ('unknown', 'seedling', 'selection', 'cultivar',
        'rootstock')),
    -- species
    species INTEGER REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
    -- the cross it came from
    "cross" INTEGER REFERENCES cross_made (id) DEFERRABLE INITIALLY DEFERRED,
    -- number of chromosome sets, if it differs or was counted
    ploidy INTEGER,
    -- self-incompatibility alleles, as S2 S5
    s_alleles TEXT NOT NULL DEFAULT '',
    -- 1 if others are judged against it
    benchmark INTEGER NOT NULL CHECK (benchmark IN (0, 1)),
    -- where it came from
    origin TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX genotype_by_species ON genotype (species) WHERE species IS NOT NULL;
CREATE INDEX genotype_by_cross ON genotype ("cross") WHERE "cross" IS NOT NULL;

-- Another name or code of a genotype.
CREATE TABLE alias (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- whose alias
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- the other name or code
    text TEXT NOT NULL DEFAULT '',
    -- what sort of name
    kind TEXT NOT NULL CHECK (kind IN ('unknown', 'code', 'name', 'trade_name',
        'misspelling')),
    -- from when it was used
    since TEXT CHECK (since GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX alias_by_genotype ON alias (genotype);

-- A dated assertion that a genotype has this parent.
CREATE TABLE parentage (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the child
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- seed or pollen parent
    role TEXT NOT NULL CHECK (role IN ('unknown', 'seed', 'pollen')),
    -- the parent, if it is in the book
    parent INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- how the pollen came
    pollination TEXT NOT NULL CHECK (pollination IN ('unknown', 'controlled', 'open', 'self')),
    -- how sure
    confidence TEXT NOT NULL CHECK (confidence IN ('unknown', 'sure', 'by_map', 'by_fruit')),
    -- day it was asserted
    asserted TEXT CHECK (asserted GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- on what grounds
    evidence TEXT NOT NULL DEFAULT '',
    -- why it no longer counts; empty while it does
    void_reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX parentage_by_genotype ON parentage (genotype);
CREATE INDEX parentage_by_parent ON parentage (parent) WHERE parent IS NOT NULL;

-- A living thing that carries a genotype.
CREATE TABLE plant (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- own roots, grafted, or a limb of a frame tree
    kind TEXT NOT NULL CHECK (kind IN ('unknown', 'own_roots', 'grafted', 'limb')),
    -- what its tag says, if not the genotype's code
    tag TEXT NOT NULL DEFAULT '',
    -- the place it stands in, or stood in
    position INTEGER REFERENCES position (id) DEFERRABLE INITIALLY DEFERRED,
    -- for a limb: the frame tree it is worked on
    frame INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- rootstock, if it is in the book
    stock INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- rootstock in words, if it is not
    stock_words TEXT NOT NULL DEFAULT '',
    -- the exact plant its wood came from
    mother_plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- day it was planted or worked
    planted TEXT CHECK (planted GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- that day as typed, if inexact
    planted_typed TEXT NOT NULL DEFAULT '',
    -- growing, lost, dead or removed
    state TEXT NOT NULL CHECK (state IN ('unknown', 'growing', 'lost', 'dead', 'removed')),
    -- since when
    state_since TEXT CHECK (state_since GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- why it was lost, died or was removed
    state_reason TEXT NOT NULL DEFAULT '',
    -- for a limb: compass bearing, degrees
    limb_bearing_deg REAL,
    -- for a limb: height above ground, centimetres
    limb_height_cm REAL,
    -- for a limb: order along the branch from the trunk
    limb_order INTEGER,
    -- for a limb: its colour mark
    limb_mark TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX plant_by_position ON plant (position) WHERE position IS NOT NULL;
CREATE INDEX plant_by_frame ON plant (frame) WHERE frame IS NOT NULL;
CREATE INDEX plant_by_stock ON plant (stock) WHERE stock IS NOT NULL;
CREATE INDEX plant_by_mother_plant ON plant (mother_plant) WHERE mother_plant IS NOT NULL;

-- A dated assertion that a plant is a genotype.
CREATE TABLE identity (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the plant
    plant INTEGER NOT NULL REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- what it is said to be; empty for unknown
    genotype INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- what the assertion rests on
    basis TEXT NOT NULL CHECK (basis IN ('unknown', 'tag_and_map', 'tag_only', 'map_only',
        'graft_record', 'fruit', 'guess')),
    -- how sure
    confidence TEXT NOT NULL CHECK (confidence IN ('unknown', 'sure', 'by_map', 'by_fruit')),
    -- from which day it is asserted
    asserted TEXT CHECK (asserted GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- day it was last confirmed at the tree
    confirmed TEXT CHECK (confirmed GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- who asserted it
    person INTEGER REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- anything else
    notes TEXT NOT NULL DEFAULT '',
    -- why it no longer counts; empty while it does
    void_reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX identity_by_plant ON identity (plant);
CREATE INDEX identity_by_genotype ON identity (genotype) WHERE genotype IS NOT NULL;
CREATE INDEX identity_by_person ON identity (person) WHERE person IS NOT NULL;

-- What is observed: trait, method and scale.
CREATE TABLE trait (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- stable key of a shipped trait; empty for the user's own
    key TEXT NOT NULL DEFAULT '',
    -- name of the trait
    name TEXT NOT NULL DEFAULT '',
    -- how it is observed
    method TEXT NOT NULL DEFAULT '',
    -- kind of scale
    scale TEXT NOT NULL CHECK (scale IN ('unknown', 'numeric', 'ordinal', 'nominal', 'date',
        'text')),
    -- unit of a numeric scale
    unit TEXT NOT NULL DEFAULT '',
    -- lowest value the scale allows
    lowest REAL,
    -- highest value the scale allows
    highest REAL,
    -- which end is the good one
    direction TEXT NOT NULL CHECK (direction IN ('unknown', 'higher_is_better',
        'lower_is_better', 'neither')),
    -- bloom, ripening, fruit, taste, disease, tree or note
    topic TEXT NOT NULL DEFAULT '',
    -- what it means
    description TEXT NOT NULL DEFAULT '',
    -- where the scale comes from
    source TEXT NOT NULL DEFAULT ''
) STRICT;

-- A worded state of an ordinal or nominal scale.
CREATE TABLE trait_state (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the trait whose scale it belongs to
    trait INTEGER NOT NULL REFERENCES trait (id) DEFERRABLE INITIALLY DEFERRED,
    -- its order, and the number that stands for it
    rank INTEGER NOT NULL,
    -- stable key of a shipped state; empty for the user's own
    key TEXT NOT NULL DEFAULT '',
    -- the word for it
    name TEXT NOT NULL DEFAULT '',
    -- when to use it
    meaning TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX trait_state_by_trait ON trait_state (trait);

-- One sitting on a date with its tasters.
CREATE TABLE tasting (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- day of the sitting
    date TEXT NOT NULL CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- what it is called
    title TEXT NOT NULL DEFAULT '',
    -- whether the tasters knew what they ate
    sight TEXT NOT NULL CHECK (sight IN ('unknown', 'blind', 'sighted')),
    -- at a table or standing in the row
    place TEXT NOT NULL CHECK (place IN ('unknown', 'table', 'row')),
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;

-- Some fruit in a tasting, with its condition.
CREATE TABLE lot (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the sitting
    tasting INTEGER NOT NULL REFERENCES tasting (id) DEFERRABLE INITIALLY DEFERRED,
    -- the plant the fruit came from
    plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- what bought or given fruit is said to be
    claimed_genotype INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- where bought or given fruit came from
    source TEXT NOT NULL DEFAULT '',
    -- place in the serving order
    serving_order INTEGER,
    -- three-digit code it was served under
    serving_code TEXT NOT NULL DEFAULT '',
    -- year of the bloom that made the fruit
    crop_year INTEGER,
    -- day it was picked or lifted from the ground
    taken TEXT CHECK (taken GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- picked or fallen
    origin TEXT NOT NULL CHECK (origin IN ('unknown', 'picked_ripe', 'picked_early',
        'dropped_today', 'on_ground_longer', 'shaken')),
    -- bag it grew in
    bag TEXT NOT NULL CHECK (bag IN ('unknown', 'none', 'paper', 'organza', 'clear')),
    -- sound or hurt, and by what
    soundness TEXT NOT NULL CHECK (soundness IN ('unknown', 'sound', 'insect', 'bird',
        'split', 'rot')),
    -- the path it took after leaving the tree
    storage TEXT NOT NULL CHECK (storage IN ('unknown', 'none', 'counter', 'fridge',
        'cellar', 'chained')),
    -- days at room temperature
    days_on_counter INTEGER,
    -- days in the refrigerator
    days_in_fridge INTEGER,
    -- days in the cellar
    days_in_cellar INTEGER,
    -- the path as typed
    storage_typed TEXT NOT NULL DEFAULT '',
    -- ripeness as eaten
    ripeness TEXT NOT NULL CHECK (ripeness IN ('unknown', 'green', 'getting_there',
        'early_prime', 'prime', 'late_prime', 'on_its_way_out', 'gone')),
    -- fruits in the lot
    fruits INTEGER,
    -- place on the tree
    canopy_place TEXT NOT NULL CHECK (canopy_place IN ('unknown', 'top', 'sun_side',
        'inside', 'low')),
    -- crop load of the tree
    crop_load TEXT NOT NULL CHECK (crop_load IN ('unknown', 'lone', 'light', 'medium',
        'heavy')),
    -- 1 for the tree's first crop, 2 for its second
    crop_number INTEGER,
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX lot_by_tasting ON lot (tasting);
CREATE INDEX lot_by_plant ON lot (plant) WHERE plant IS NOT NULL;
CREATE INDEX lot_by_claimed_genotype ON lot (claimed_genotype) WHERE claimed_genotype IS NOT NULL;

-- One taster's rating of one lot.
CREATE TABLE score (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the lot
    lot INTEGER NOT NULL REFERENCES lot (id) DEFERRABLE INITIALLY DEFERRED,
    -- the taster
    taster INTEGER NOT NULL REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- liking, 1 to 9, halves allowed
    liking REAL,
    -- this taster's place for the lot
    serving_order INTEGER,
    -- this taster's rank of the lot, 1 the best
    rank INTEGER,
    -- what the taster would do with it
    verdict TEXT NOT NULL CHECK (verdict IN ('unknown', 'cull', 'no_reason_to_keep', 'again',
        'watch', 'back_up_now', 'parent_only', 'name_talk')),
    -- uses it suits: dessert cooking juice cider keeping
    uses TEXT NOT NULL DEFAULT '',
    -- free words
    words TEXT NOT NULL DEFAULT '',
    -- why it no longer counts; empty while it does
    void_reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX score_by_lot ON score (lot);
CREATE INDEX score_by_taster ON score (taster);

-- Wood sent or received.
CREATE TABLE parcel (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- sent or received
    direction TEXT NOT NULL CHECK (direction IN ('unknown', 'sent', 'received')),
    -- the grower
    person INTEGER NOT NULL REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- whose wood
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- the exact plant the wood was cut from
    mother_plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- day it went or came
    date TEXT CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- number of sticks
    sticks INTEGER,
    -- what was agreed: naming, passing on, reporting
    conditions TEXT NOT NULL DEFAULT '',
    -- when a report may be asked for
    report_due TEXT CHECK (report_due GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX parcel_by_person ON parcel (person);
CREATE INDEX parcel_by_genotype ON parcel (genotype);
CREATE INDEX parcel_by_mother_plant ON parcel (mother_plant) WHERE mother_plant IS NOT NULL;

-- What another grower says of a genotype at his site.
CREATE TABLE report (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the grower
    person INTEGER NOT NULL REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- what it is about
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- where it grows
    site INTEGER REFERENCES site (id) DEFERRABLE INITIALLY DEFERRED,
    -- the wood behind it
    parcel INTEGER REFERENCES parcel (id) DEFERRABLE INITIALLY DEFERRED,
    -- day the report came
    received TEXT CHECK (received GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- the grower's own words
    words TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX report_by_person ON report (person);
CREATE INDEX report_by_genotype ON report (genotype);
CREATE INDEX report_by_site ON report (site) WHERE site IS NOT NULL;
CREATE INDEX report_by_parcel ON report (parcel) WHERE parcel IS NOT NULL;

-- A trait of a subject on a date, by a person.
CREATE TABLE observation (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- subject, if a plant or limb
    plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- subject, if a genotype
    genotype INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- subject, if a lot of fruit
    lot INTEGER REFERENCES lot (id) DEFERRABLE INITIALLY DEFERRED,
    -- subject, if a family
    "cross" INTEGER REFERENCES cross_made (id) DEFERRABLE INITIALLY DEFERRED,
    -- subject, if a place in a row
    position INTEGER REFERENCES position (id) DEFERRABLE INITIALLY DEFERRED,
    -- subject, if a site
    site INTEGER REFERENCES site (id) DEFERRABLE INITIALLY DEFERRED,
    -- what was observed
    trait INTEGER NOT NULL REFERENCES trait (id) DEFERRABLE INITIALLY DEFERRED,
    -- day, or first day it may have been
    date TEXT CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- last day it may have been, if inexact
    date_to TEXT CHECK (date_to GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- the date as typed, if inexact
    date_typed TEXT NOT NULL DEFAULT '',
    -- year of the bloom it belongs to
    crop_year INTEGER,
    -- number, or lower end of a range
    value REAL,
    -- upper end of a range
    value_to REAL,
    -- how exact the value is
    qualifier TEXT NOT NULL CHECK (qualifier IN ('unknown', 'exact', 'about', 'less_than',
        'greater_than', 'range')),
    -- the worded state, on ordinal and nominal scales
    state INTEGER REFERENCES trait_state (id) DEFERRABLE INITIALLY DEFERRED,
    -- the value, on date scales
    value_date TEXT CHECK (value_date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- words: the value on text scales, else a remark
    words TEXT NOT NULL DEFAULT '',
    -- the value as typed
    typed TEXT NOT NULL DEFAULT '',
    -- the unit as typed
    unit_typed TEXT NOT NULL DEFAULT '',
    -- number of the fruit or reading
    replicate INTEGER,
    -- what it was measured with
    instrument TEXT NOT NULL DEFAULT '',
    -- who observed
    person INTEGER REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- the grower's report it comes from
    report INTEGER REFERENCES report (id) DEFERRABLE INITIALLY DEFERRED,
    -- file it was imported from
    source_file TEXT NOT NULL DEFAULT '',
    -- sheet it was imported from
    source_sheet TEXT NOT NULL DEFAULT '',
    -- cell or line it was imported from
    source_cell TEXT NOT NULL DEFAULT '',
    -- why it no longer counts; empty while it does
    void_reason TEXT NOT NULL DEFAULT '',
    CONSTRAINT exactly_one_subject CHECK ((plant IS NOT NULL) + (genotype IS NOT NULL) +
        (lot IS NOT NULL) + ("cross" IS NOT NULL) + (position IS NOT NULL) +
        (site IS NOT NULL) = 1)
) STRICT;
CREATE INDEX observation_by_plant ON observation (plant) WHERE plant IS NOT NULL;
CREATE INDEX observation_by_genotype ON observation (genotype) WHERE genotype IS NOT NULL;
CREATE INDEX observation_by_lot ON observation (lot) WHERE lot IS NOT NULL;
CREATE INDEX observation_by_cross ON observation ("cross") WHERE "cross" IS NOT NULL;
CREATE INDEX observation_by_position ON observation (position) WHERE position IS NOT NULL;
CREATE INDEX observation_by_site ON observation (site) WHERE site IS NOT NULL;
CREATE INDEX observation_by_trait ON observation (trait);
CREATE INDEX observation_by_state ON observation (state) WHERE state IS NOT NULL;
CREATE INDEX observation_by_person ON observation (person) WHERE person IS NOT NULL;
CREATE INDEX observation_by_report ON observation (report) WHERE report IS NOT NULL;

-- A dated decision about a genotype, with its reason.
CREATE TABLE decision (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- what was decided about
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- the stage it goes to
    stage TEXT NOT NULL CHECK (stage IN ('unknown', 'planned', 'seed', 'nursery', 'juvenile',
        'bearing', 'watched', 'selection', 'advanced', 'named', 'released', 'parent',
        'culled')),
    -- day of the decision
    date TEXT NOT NULL CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- why
    reason TEXT NOT NULL DEFAULT '',
    -- who decided
    person INTEGER REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- why it no longer counts; empty while it does
    void_reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX decision_by_genotype ON decision (genotype);
CREATE INDEX decision_by_person ON decision (person) WHERE person IS NOT NULL;

-- A picture beside the book, by its hash.
CREATE TABLE photo (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- hash of the file, 64 lower-case hexadecimal digits
    sha256 TEXT NOT NULL DEFAULT '',
    -- image/png, image/jpeg or image/svg+xml
    media_type TEXT NOT NULL DEFAULT '',
    -- what it shows
    caption TEXT NOT NULL DEFAULT '',
    -- day it was taken
    taken TEXT CHECK (taken GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- who took it
    person INTEGER REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- the plant it shows
    plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- the genotype it shows
    genotype INTEGER REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- the lot it shows
    lot INTEGER REFERENCES lot (id) DEFERRABLE INITIALLY DEFERRED,
    -- the place it shows
    position INTEGER REFERENCES position (id) DEFERRABLE INITIALLY DEFERRED,
    -- why it no longer counts; empty while it does
    void_reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX photo_by_person ON photo (person) WHERE person IS NOT NULL;
CREATE INDEX photo_by_plant ON photo (plant) WHERE plant IS NOT NULL;
CREATE INDEX photo_by_genotype ON photo (genotype) WHERE genotype IS NOT NULL;
CREATE INDEX photo_by_lot ON photo (lot) WHERE lot IS NOT NULL;
CREATE INDEX photo_by_position ON photo (position) WHERE position IS NOT NULL;

-- This clone, so many, why.
CREATE TABLE graft_wish (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- what to graft
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- the exact plant to take the wood from
    mother_plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- how many living copies are wished for
    number INTEGER NOT NULL,
    -- why
    reason TEXT NOT NULL DEFAULT '',
    -- day of the wish
    wished TEXT CHECK (wished GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- who wishes
    person INTEGER REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- open, ordered, done or dropped
    state TEXT NOT NULL CHECK (state IN ('unknown', 'open', 'ordered', 'done', 'dropped')),
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX graft_wish_by_genotype ON graft_wish (genotype);
CREATE INDEX graft_wish_by_mother_plant ON graft_wish (mother_plant) WHERE mother_plant IS NOT NULL;
CREATE INDEX graft_wish_by_person ON graft_wish (person) WHERE person IS NOT NULL;

-- So many grafts by a method onto named stocks in a season.
CREATE TABLE graft_order (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the wish it answers
    wish INTEGER REFERENCES graft_wish (id) DEFERRABLE INITIALLY DEFERRED,
    -- what is grafted
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- the exact plant the wood came from
    mother_plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- method
    method TEXT NOT NULL CHECK (method IN ('unknown', 'whip_and_tongue', 'cleft', 'bark',
        'chip_bud', 't_bud', 'other')),
    -- number of grafts
    number INTEGER NOT NULL,
    -- frame tree or stock, if it is in the book
    onto_plant INTEGER REFERENCES plant (id) DEFERRABLE INITIALLY DEFERRED,
    -- frame tree or stock in words
    onto_words TEXT NOT NULL DEFAULT '',
    -- day of grafting
    date TEXT CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- planned season in words
    season TEXT NOT NULL DEFAULT '',
    -- why
    reason TEXT NOT NULL DEFAULT '',
    -- whose hand
    person INTEGER REFERENCES person (id) DEFERRABLE INITIALLY DEFERRED,
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX graft_order_by_wish ON graft_order (wish) WHERE wish IS NOT NULL;
CREATE INDEX graft_order_by_genotype ON graft_order (genotype);
CREATE INDEX graft_order_by_mother_plant ON graft_order (mother_plant) WHERE mother_plant IS NOT NULL;
CREATE INDEX graft_order_by_onto_plant ON graft_order (onto_plant) WHERE onto_plant IS NOT NULL;
CREATE INDEX graft_order_by_person ON graft_order (person) WHERE person IS NOT NULL;

-- What of a graft order was alive at a check.
CREATE TABLE graft_check (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the order
    graft_order INTEGER NOT NULL REFERENCES graft_order (id) DEFERRABLE INITIALLY DEFERRED,
    -- which of the three looks
    checkpoint TEXT NOT NULL CHECK (checkpoint IN ('unknown', 'four_to_six_weeks',
        'midsummer', 'leaf_fall')),
    -- day of the look
    date TEXT CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- grafts alive
    alive INTEGER NOT NULL,
    -- why the others died, in words
    cause TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX graft_check_by_graft_order ON graft_check (graft_order);

-- A day's weather at a site.
CREATE TABLE weather_day (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- where it was measured
    site INTEGER NOT NULL REFERENCES site (id) DEFERRABLE INITIALLY DEFERRED,
    -- civil day of the site
    date TEXT NOT NULL CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- lowest air temperature, degrees Celsius
    lowest_c REAL,
    -- highest air temperature, degrees Celsius
    highest_c REAL,
    -- precipitation, millimetres
    rain_mm REAL,
    -- measured, filled by a rule, or typed
    source TEXT NOT NULL CHECK (source IN ('unknown', 'station', 'filled', 'typed'))
) STRICT;
CREATE INDEX weather_day_by_site ON weather_day (site);

-- Ten to fourteen days of the season that have a ladder of benchmarks.
CREATE TABLE slot (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the season it belongs to
    crop_year INTEGER NOT NULL,
    -- the species it is for
    species INTEGER REFERENCES species (id) DEFERRABLE INITIALLY DEFERRED,
    -- first day
    first_day TEXT NOT NULL CHECK (first_day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- last day
    last_day TEXT NOT NULL CHECK (last_day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- what it is called
    name TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX slot_by_species ON slot (species) WHERE species IS NOT NULL;

-- A benchmark elected to a rung of a slot's ladder.
CREATE TABLE election (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the slot
    slot INTEGER NOT NULL REFERENCES slot (id) DEFERRABLE INITIALLY DEFERRED,
    -- floor, best or famous name
    rung TEXT NOT NULL CHECK (rung IN ('unknown', 'floor', 'best', 'famous')),
    -- the benchmark
    genotype INTEGER NOT NULL REFERENCES genotype (id) DEFERRABLE INITIALLY DEFERRED,
    -- day of the election
    elected TEXT CHECK (elected GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- why
    reason TEXT NOT NULL DEFAULT '',
    -- why it no longer counts; empty while it does
    void_reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX election_by_slot ON election (slot);
CREATE INDEX election_by_genotype ON election (genotype);

-- How the columns of somebody's table become records.
CREATE TABLE recipe (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- name of the recipe
    name TEXT NOT NULL DEFAULT '',
    -- what each line becomes
    target TEXT NOT NULL CHECK (target IN ('unknown', 'trees', 'parents', 'scores',
        'walk_marks')),
    -- JSON: for each column of the table, the field it fills
    columns TEXT NOT NULL DEFAULT '',
    -- anything else
    notes TEXT NOT NULL DEFAULT ''
) STRICT;

-- The journal: what was changed, when, by whom. Nothing is ever taken out of it. (copy, position)
-- names an entry among all copies of a book.
CREATE TABLE journal_entry (
    position INTEGER PRIMARY KEY CHECK (position > 0), -- 1, 2, 3 ... in this book
    copy BLOB NOT NULL CHECK (length(copy) = 16), -- the copy of the book it was written in
    moment INTEGER NOT NULL, -- milliseconds since 1970-01-01 UTC
    person BLOB CHECK (length(person) = 16), -- uuid of the person, if the book knew
    kind TEXT NOT NULL CHECK (kind IN ('edit', 'undo', 'redo', 'baseline')),
    target INTEGER, -- position of the entry undone or redone
    sentence TEXT NOT NULL DEFAULT '', -- what it is called on the screen
    digest TEXT NOT NULL DEFAULT '' -- of a baseline: digest of the whole content
) STRICT;

-- What an entry changed, in order. A JSON object holds the fields that changed: before (NULL where
-- the record did not exist yet) and after (NULL where it no longer does). References are written
-- as uuids, 36 characters.
CREATE TABLE journal_change (
    entry INTEGER NOT NULL REFERENCES journal_entry (position) DEFERRABLE INITIALLY DEFERRED,
    number INTEGER NOT NULL, -- 1, 2, 3 ... in the entry
    kind TEXT NOT NULL, -- the table
    record BLOB NOT NULL CHECK (length(record) = 16), -- its uuid
    before TEXT,
    after TEXT,
    PRIMARY KEY (entry, number)
) STRICT, WITHOUT ROWID;
CREATE INDEX journal_change_by_record ON journal_change (record);

-- What the file knows of itself: "copy" (uuid of this copy), "file" (where it lay, to notice that
-- it was copied), "worked_on" (the day it was last worked on).
CREATE TABLE book_meta (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The finder: the words of every record, so that any of them leads to it. It holds nothing that is
-- not in the tables above and can be filled again from them. rowid = id * 64 + number of the kind.
CREATE TABLE finder_kind (
    number INTEGER PRIMARY KEY CHECK (number BETWEEN 0 AND 63),
    kind TEXT NOT NULL UNIQUE
) STRICT;
INSERT INTO finder_kind (number, kind) VALUES
    (1, 'book_facts'),
    (2, 'person'),
    (3, 'site'),
    (4, 'trial_row'),
    (5, 'position'),
    (6, 'species'),
    (7, 'cross_made'),
    (8, 'genotype'),
    (9, 'alias'),
    (10, 'parentage'),
    (11, 'plant'),
    (12, 'identity'),
    (13, 'trait'),
    (14, 'trait_state'),
    (15, 'tasting'),
    (16, 'lot'),
    (17, 'score'),
    (18, 'parcel'),
    (19, 'report'),
    (20, 'observation'),
    (21, 'decision'),
    (22, 'photo'),
    (23, 'graft_wish'),
    (24, 'graft_order'),
    (25, 'graft_check'),
    (26, 'weather_day'),
    (27, 'slot'),
    (28, 'election'),
    (29, 'recipe');
CREATE VIRTUAL TABLE finder USING fts5 (
    words,
    prefix = '2 3',
    tokenize = 'unicode61 remove_diacritics 2'
);
