#include "core/evaluation/merit/flavour_words.h"

#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <map>
#include <unordered_set>

namespace pipwright {

namespace {

using enum FlavourGroup;

constexpr std::array kGlossary = {
    FlavourWord{"sweet", taste, "sweet", "süß", "sugar is what is tasted first",
                "a teaspoon of sugar in a glass of water", "sweet suss zucker sugar"},
    FlavourWord{"sour", taste, "sour", "sauer", "acid that makes the mouth water",
                "a slice of lemon in water", "sour sauer saur acid tart"},
    FlavourWord{"balanced", taste, "balanced", "ausgewogen", "neither sugar nor acid leads",
                "orange juice pressed at home", "balanc ausgewog harmoni"},
    FlavourWord{"bitter", taste, "bitter", "bitter", "stays at the back of the tongue",
                "the white of a grapefruit peel", "bitter"},
    FlavourWord{"astringent", taste, "astringent", "herb",
                "dries the mouth and roughens the tongue", "black tea left to draw ten minutes",
                "astring herb pucker tannin gerbstoff"},
    FlavourWord{"flat", taste, "flat", "fad", "nothing stands out, as if watered",
                "juice thinned with as much water",
                "flat fad bland insipid wassrig water langweil"},
    FlavourWord{"rich", taste, "rich", "gehaltvoll", "much flavour that lasts after swallowing",
                "thick juice before it is thinned", "rich gehaltvoll intens kraftig"},
    FlavourWord{"sharp", taste, "sharp", "spitz", "acid so strong that it stings",
                "unsweetened cranberry", "sharp spitz stechend"},
    FlavourWord{"aromatic", aroma, "aromatic", "aromatisch", "fragrance fills the nose from inside",
                "a ripe quince lying in a room", "aroma fragran duft parfum perfum"},
    FlavourWord{"berry", aroma, "berry", "Beere", "red summer fruit", "raspberries",
                "berr beer raspberr himbeer strawberr erdbeer"},
    FlavourWord{"citrus", aroma, "citrus", "Zitrus", "fresh peel", "the zest of an orange",
                "citrus zitrus citron zitron lemon orange lime limett"},
    FlavourWord{"pear", aroma, "pear", "Birne", "soft and fruity like a buttery pear",
                "a soft pear from the shop", "pear birn"},
    FlavourWord{"banana", aroma, "banana", "Banane", "the ester of sweets",
                "a banana with brown spots", "banan"},
    FlavourWord{"pineapple", aroma, "pineapple", "Ananas", "tropical, sweet and sour in one",
                "pineapple juice", "pineappl ananas tropic tropisch"},
    FlavourWord{"rose", aroma, "rose", "Rose", "flower petals", "rose water from the baker's shelf",
                "rose rosen rosenwasser"},
    FlavourWord{"flower", aroma, "flower", "Blüte", "blossom, light",
                "elderflower syrup, well thinned",
                "flower floral blossom blut blum holunder elder"},
    FlavourWord{"honey", aroma, "honey", "Honig", "warm and sweet", "clear blossom honey",
                "honey honig"},
    FlavourWord{"spice", aroma, "spice", "Gewürz", "kitchen spices", "cinnamon stick in warm water",
                "spic gewurz wurz cinnamon zimt clove nelke"},
    FlavourWord{"anise", aroma, "anise", "Anis", "cool and sweet like fennel", "fennel tea",
                "anis fennel fenchel liquoric licoric lakritz"},
    FlavourWord{"almond", aroma, "almond", "Mandel", "crushed fruit stones", "marzipan",
                "almond mandel marzipan"},
    FlavourWord{"nut", aroma, "nut", "Nuss", "dry and mild", "fresh hazelnuts",
                "nut nuss hazel hasel walnut walnuss"},
    FlavourWord{"vanilla", aroma, "vanilla", "Vanille", "sweet and round", "a vanilla pod in milk",
                "vanill"},
    FlavourWord{"wine", aroma, "wine", "Wein", "like must that begins to work",
                "white grape juice just pressed", "wine vinous wein vinos"},
    FlavourWord{"grass", aroma, "grass", "Gras", "cut leaves; often not yet ripe",
                "a crushed blade of grass", "grass gras herbac krautig leafy"},
    FlavourWord{"crisp", texture, "crisp", "knackig", "breaks with a sound at the first bite",
                "a fresh radish", "crisp knack crunch snap"},
    FlavourWord{"firm", texture, "firm", "fest", "takes force to bite", "a raw carrot",
                "firm fest hard hart"},
    FlavourWord{"soft", texture, "soft", "weich", "gives way to the tongue", "a ripe banana",
                "soft weich tender zart"},
    FlavourWord{"juicy", texture, "juicy", "saftig", "juice runs at the bite",
                "a slice of water melon", "juic saft"},
    FlavourWord{"dry", texture, "dry", "trocken", "no juice however long it is chewed",
                "a rice cake", "dry dri trocken"},
    FlavourWord{"mealy", texture, "mealy", "mehlig", "falls into dry grains",
                "a floury boiled potato", "meal mehl flour"},
    FlavourWord{"melting", texture, "melting", "schmelzend", "dissolves without chewing",
                "cold butter on the tongue", "melt schmelz butter"},
    FlavourWord{"grainy", texture, "grainy", "körnig", "hard grains in soft flesh",
                "semolina pudding", "grain korn gritt grit sandig sandy"},
    FlavourWord{"fine", texture, "fine-grained", "feinzellig", "flesh without visible cells",
                "a hard cheese cut thin", "fine fein feinzell"},
    FlavourWord{"coarse", texture, "coarse", "grob", "large cells, torn rather than cut",
                "bread with an open crumb", "coars grob"},
    FlavourWord{"tough", skin, "tough skin", "zähe Schale",
                "skin that stays after the flesh is gone", "the skin of a grape chewed alone",
                "tough zah zahschal leather leder"},
    FlavourWord{"thick", skin, "thick skin", "dicke Schale", "skin felt as a layer of its own",
                "the skin of a plum", "thick dick dickschal"},
    FlavourWord{"waxy", skin, "waxy", "fettig", "greasy to the fingers", "a candle rubbed",
                "wax wachs grea greas fett"},
    FlavourWord{"russet", skin, "russeted", "berostet", "rough brown skin", "fine sandpaper",
                "russet berost rostig"},
    FlavourWord{"starchy", fault, "starchy", "stärkig", "coats the teeth; not yet ripe",
                "a raw potato licked", "starch stark unripe unreif"},
    FlavourWord{"musty", fault, "musty", "muffig", "cellar air", "a damp cardboard box",
                "must muff moder mouldy moldy"},
    FlavourWord{"fermented", fault, "fermented", "vergoren", "over-ripe, alcohol",
                "cider left open for a day", "ferment vergor garig alcohol alkohol"},
    FlavourWord{"soapy", fault, "soapy", "seifig", "perfume that clings", "the smell of hand soap",
                "soap seif"},
    FlavourWord{"cardboard", fault, "stale", "alt", "stored too long", "nuts of last year",
                "stal card cardboard pappe altback"},
};

// What may follow a stem. German ones are folded, so "-ß" and umlauts do not occur.
constexpr std::array<std::string_view, 45> kEndings = {
    "",     "s",     "es",   "y",     "ey",     "ies",    "ish",    "ness", "iness",
    "ly",   "ily",   "ed",   "ing",   "er",     "est",    "ier",    "iest", "ity",
    "ic",   "ous",   "e",    "en",    "em",     "ere",    "eren",   "eres", "erer",
    "ste",  "sten",  "n",    "ig",    "ige",    "iger",   "iges",   "igen", "igem",
    "lich", "liche", "isch", "ische", "ischer", "isches", "ischen", "keit", "igkeit"};

constexpr std::array<std::string_view, 10> kDenials = {"no",   "not",   "without", "never", "nicht",
                                                       "kein", "keine", "keinen",  "ohne",  "nie"};
constexpr std::array<std::string_view, 4> kTurns = {"but", "aber", "though", "sondern"};

template <typename List, typename Word>
bool isListed(const List& list, const Word& word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

/// Whether the word is the stem with an ending.
bool grewFrom(std::string_view stem, std::string_view word) {
    return word.substr(0, stem.size()) == stem && isListed(kEndings, word.substr(stem.size()));
}

void addFlavoursOf(std::string_view word, std::vector<std::size_t>& found) {
    for (std::size_t i = 0; i < kGlossary.size(); ++i) {
        const auto stems = split(kGlossary[i].stems, ' ');
        if (std::any_of(stems.begin(), stems.end(),
                        [word](std::string_view stem) { return grewFrom(stem, word); })) {
            found.push_back(i);
        }
    }
}

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// Lots of sittings whose key is sealed: nothing is told of them yet.
Result<std::unordered_set<Uuid>> sealedLots(const Store& store) {
    const auto keys = store.all<SealedKey>();
    if (!keys) {
        return keys.problem();
    }
    std::unordered_set<Uuid> lots;
    for (const SealedKey& key : *keys) {
        if (key.opened) {
            continue;
        }
        const auto served = store.where<Lot>("tasting", key.tasting.uuid);
        if (!served) {
            return served.problem();
        }
        for (const Lot& lot : *served) {
            lots.insert(lot.id.uuid);
        }
    }
    return lots;
}

} // namespace

std::span<const FlavourWord> flavourGlossary() {
    return kGlossary;
}

std::optional<std::size_t> flavourCalled(std::string_view key) {
    for (std::size_t i = 0; i < kGlossary.size(); ++i) {
        if (kGlossary[i].key == key) {
            return i;
        }
    }
    return std::nullopt;
}

std::vector<std::size_t> flavoursIn(std::string_view text) {
    const std::string folded = foldedForSearch(text);
    std::vector<std::size_t> found;
    int sinceDenial = 3; // words; from three on a denial is over
    for (std::size_t at = 0; at < folded.size();) {
        if (!isLetter(folded[at])) {
            sinceDenial = folded[at] == ' ' || folded[at] == '-' ? sinceDenial : 3;
            ++at;
            continue;
        }
        std::size_t end = at;
        while (end < folded.size() && isLetter(folded[end])) {
            ++end;
        }
        const std::string_view word = std::string_view(folded).substr(at, end - at);
        at = end;
        if (isListed(kDenials, word)) {
            sinceDenial = 0;
        } else if (isListed(kTurns, word)) {
            sinceDenial = 3;
        } else if (++sinceDenial > 2) {
            addFlavoursOf(word, found);
        }
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

std::vector<FlavourCount> flavourCounts(const std::vector<SaidWords>& said) {
    std::map<std::size_t, int> times;
    for (const SaidWords& one : said) {
        for (const std::size_t word : flavoursIn(one.words)) {
            times[word] += one.times;
        }
    }
    std::vector<FlavourCount> counts;
    for (const auto& [word, count] : times) {
        counts.push_back({word, count});
    }
    std::stable_sort(
        counts.begin(), counts.end(),
        [](const FlavourCount& a, const FlavourCount& b) { return a.times > b.times; });
    return counts;
}

Result<std::vector<LotWords>> lotWords(const Store& store) {
    const auto sealed = sealedLots(store);
    if (!sealed) {
        return sealed.problem();
    }
    ScanRequest request;
    for (const auto* field : {"lot", "taster", "words", "void_reason"}) {
        request.fields.push_back(fieldIndex(Kind::score, field).value());
    }
    std::vector<LotWords> all;
    const Outcome outcome = store.scan(Kind::score, request, [&](const Record& record) {
        const auto score = fromRecord<Score>(record);
        if (score.voidReason.empty() && !score.words.empty() && !sealed->contains(score.lot.uuid)) {
            all.push_back({score.lot, score.taster, flavoursIn(score.words)});
        }
        return true;
    });
    if (!outcome) {
        return outcome.problem();
    }
    return all;
}

std::vector<FlavourAgreement> flavourAgreement(const std::vector<LotWords>& said) {
    std::map<Uuid, std::map<Uuid, std::vector<std::size_t>>> byLot;
    for (const LotWords& one : said) {
        auto& words = byLot[one.lot.uuid][one.taster.uuid];
        words.insert(words.end(), one.words.begin(), one.words.end());
    }
    std::vector<FlavourAgreement> all(kGlossary.size());
    for (const auto& [lot, tasters] : byLot) {
        for (auto one = tasters.begin(); one != tasters.end(); ++one) {
            for (auto other = std::next(one); other != tasters.end(); ++other) {
                for (std::size_t word = 0; word < all.size(); ++word) {
                    const int uses = (isListed(one->second, word) ? 1 : 0) +
                                     (isListed(other->second, word) ? 1 : 0);
                    ++(uses == 2   ? all[word].both
                       : uses == 1 ? all[word].oneOnly
                                   : all[word].neither);
                }
            }
        }
    }
    std::vector<FlavourAgreement> used;
    for (std::size_t word = 0; word < all.size(); ++word) {
        FlavourAgreement& one = all[word];
        if (one.both + one.oneOnly == 0) {
            continue;
        }
        one.word = word;
        one.positive = 2.0 * one.both / (2.0 * one.both + one.oneOnly);
        // Either of a pair may be called the first, so both use the word equally often.
        const double pairs = one.both + one.oneOnly + one.neither;
        const double share = (one.both + one.oneOnly / 2.0) / pairs;
        const double chance = share * share + (1 - share) * (1 - share);
        if (chance < 1) {
            one.kappa = ((one.both + one.neither) / pairs - chance) / (1 - chance);
        }
        used.push_back(one);
    }
    std::stable_sort(used.begin(), used.end(),
                     [](const FlavourAgreement& a, const FlavourAgreement& b) {
                         return a.both + a.oneOnly > b.both + b.oneOnly;
                     });
    return used;
}

} // namespace pipwright
