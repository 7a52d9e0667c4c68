#pragma once

#include "core/statistics/mixed_model.h"

#include <vector>

/// Published data sets of about 300 records or fewer, typed in. Levels are coded in the order of
/// their names; the packages named are those of R in which the sets can be found today.
namespace pipwright::published {

/// Yield of dyestuff from five preparations of each of six batches; the second set was made up.
/// Davies & Goldsmith (eds., 1972), Statistical Methods in Research and Production, 4th ed.,
/// table 6.3; Box & Tiao (1973), Bayesian Inference in Statistical Analysis, 5.1.2 (lme4).
std::vector<double> dyestuffYield();
std::vector<double> dyestuff2Yield();
LevelCodes dyestuffBatch();

/// Diameter of growth inhibition, six samples on each of 24 plates. Davies & Goldsmith (1972),
/// table 6.6 (lme4).
std::vector<double> penicillinDiameter();
LevelCodes penicillinPlate();
LevelCodes penicillinSample();

/// Strength of a chemical paste, two tests of each of three casks of ten batches.
/// Davies & Goldsmith (1972), table 6.5 (lme4).
std::vector<double> pastesStrength();
LevelCodes pastesBatch();
LevelCodes pastesSample(); ///< cask within batch

/// Reaction time in ms of 18 people on ten days with little sleep. Belenky et al. (2003),
/// J. Sleep Res. 12:1-12 (lme4).
std::vector<double> sleepReaction();
std::vector<double> sleepDays();
LevelCodes sleepSubject();

/// Breaking angle of chocolate cakes, three recipes, 15 replicates, six temperatures.
/// Cook (1938), thesis, Iowa State College; Cochran & Cox (1957), Experimental Designs, 7.43
/// (lme4).
std::vector<double> cakeAngle();
LevelCodes cakeReplicate();
LevelCodes cakeRecipe();
LevelCodes cakeTemperature(); ///< 175 to 225 by 10

/// Eight assessors judged three television sets with four pictures, twice. Kuznetsova et al.
/// (2017), J. Stat. Softw. 82(13) (lmerTest).
std::vector<double> televisionSharpness();
std::vector<double> televisionColour();
LevelCodes televisionAssessor();
LevelCodes televisionSet();
LevelCodes televisionPicture();

/// Thousand-seed weight of meadowfoam, 50 single entries and three checks in six blocks.
/// J. Kling, teaching notes on augmented designs, Oregon State University (agridat).
std::vector<double> meadowfoamWeight();
LevelCodes meadowfoamEntry();
LevelCodes meadowfoamBlock();

} // namespace pipwright::published
