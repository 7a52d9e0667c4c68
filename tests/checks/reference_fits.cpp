#include "tests/checks/reference_fits.h"

#include "tests/checks/published_data.h"

#include <array>
#include <cmath>
#include <utility>

// Fits by lme4 1.1-31 (R 4.2.2) with the optimiser's tolerance tightened to 1e-12.

namespace pipwright::published {

namespace {

MixedModel modelOf(std::vector<double> response, std::vector<FixedTerm> fixed,
                   std::vector<RandomTerm> random) {
    MixedModel model;
    model.response = std::move(response);
    model.fixed = std::move(fixed);
    model.random = std::move(random);
    return model;
}

RandomTerm term(const char* name, LevelCodes levels) {
    RandomTerm random;
    random.name = name;
    random.levels = std::move(levels);
    return random;
}

LevelCodes crossed(const LevelCodes& first, const LevelCodes& second) {
    LevelCodes both{first.ofRecord, first.count * second.count};
    for (std::size_t record = 0; record < both.ofRecord.size(); ++record) {
        both.ofRecord[record] = both.ofRecord[record] * second.count + second.ofRecord[record];
    }
    return both;
}

/// Orthonormal polynomials of degree 1 to 5 over six equally spaced temperatures, and their
/// slopes by recipe: the coding of X that the criterion below rests on.
std::vector<FixedTerm> cakeFixed() {
    constexpr std::array<std::array<double, 6>, 5> kPolynomials{{{-5, -3, -1, 1, 3, 5},
                                                                 {5, -1, -4, -4, -1, 5},
                                                                 {-5, 7, 4, -4, -7, 5},
                                                                 {1, -3, 2, 2, -3, 1},
                                                                 {-1, 5, -10, 10, -5, 1}}};
    const LevelCodes temperature = cakeTemperature();
    std::vector<FixedTerm> terms{FixedTerm::factor("recipe", cakeRecipe())};
    std::vector<FixedTerm> slopes;
    for (const auto& polynomial : kPolynomials) {
        double square = 0;
        for (const double value : polynomial) {
            square += value * value;
        }
        std::vector<double> column;
        for (const std::int32_t code : temperature.ofRecord) {
            column.push_back(polynomial[static_cast<std::size_t>(code)] / std::sqrt(square));
        }
        terms.push_back(FixedTerm::number("temperature", column));
        FixedTerm slope = FixedTerm::factor("recipe:temperature", cakeRecipe());
        slope.covariate = column;
        slopes.push_back(std::move(slope));
    }
    terms.insert(terms.end(), slopes.begin(), slopes.end());
    return terms;
}

ReferenceFit dyestuff() {
    ReferenceFit fit;
    fit.name = "Dyestuff";
    fit.model = modelOf(dyestuffYield(), {}, {term("batch", dyestuffBatch())});
    fit.criterion = 319.6542768;
    fit.variances = {1764.049949, 2451.250011};
    fit.fixed = {{1527.5, 19.38341194}};
    fit.predictions = {
        {-17.60685122, 0.3912633605, 28.56222532, -23.08453827, 56.73318728, -44.99528646}};
    return fit;
}

ReferenceFit dyestuff2() {
    ReferenceFit fit;
    fit.name = "Dyestuff2";
    fit.model = modelOf(dyestuff2Yield(), {}, {term("batch", dyestuffBatch())});
    fit.criterion = 161.8282778;
    fit.variances = {0, 13.80630963};
    fit.fixed = {{5.6656, 0.6783880312}};
    fit.predictions = {{0, 0, 0, 0, 0, 0}};
    return fit;
}

ReferenceFit penicillin() {
    ReferenceFit fit;
    fit.name = "Penicillin";
    fit.model = modelOf(penicillinDiameter(), {},
                        {term("plate", penicillinPlate()), term("sample", penicillinSample())});
    fit.criterion = 330.860589;
    fit.variances = {0.7169081768, 3.730917588, 0.3024154627};
    fit.fixed = {{22.97222222, 0.8085733606}};
    fit.predictions = {
        {0.8045470411, 0.8045470411, 0.1816719125,  0.3373906947,  0.02595313036, -0.4412032161,
         -1.375515909, 0.8045470411, -0.7526407804, -0.7526407804, 0.9602658233,  0.4931094768,
         1.42742217,   0.4931094768, 0.9602658233,  0.02595313036, -0.2854844339, -0.2854844339,
         -1.375515909, 0.9602658233, -0.9083595626, -0.2854844339, -0.5969219983, -1.219797127},
        {2.187057967, -1.010476149, 1.937899464, -0.09689497321, -0.01384213903, -3.00374417}};
    return fit;
}

ReferenceFit pastes() {
    ReferenceFit fit;
    fit.name = "Pastes";
    fit.model = modelOf(pastesStrength(), {},
                        {term("sample", pastesSample()), term("batch", pastesBatch())});
    fit.criterion = 246.9907459;
    fit.variances = {8.433666581, 1.65730913, 0.6779999845};
    fit.fixed = {{60.05333333, 0.6768700998}};
    fit.predictions = {{1.774686853,  0.3326509831, 1.966958302,   0.8836557037,  -2.481094659,
                        0.2107056312, -2.572208821, 2.61912031,    3.628545419,   -3.052808792,
                        -2.091451546, 4.493845593,  -3.317566213,  -3.942448423,  -0.3854266112,
                        3.597556924,  -1.641840069, -0.1517363367, 2.453511551,   -0.1421530141,
                        -2.593613993, -1.789522451, 4.267028202,   3.161467368,   -4.573901018,
                        4.270585649,  -2.218575764, -0.6936961894, -0.3091532908, -1.703121298},
                       {0.8006444316, -0.2725084963, 0.7222680941, -0.1278137195, -1.502414099,
                        0.3545022031, -0.0554663311, 1.108120832, -0.4955796105, -0.5317533047}};
    return fit;
}

ReferenceFit sleepIntercepts() {
    ReferenceFit fit;
    fit.name = "sleepstudy, intercepts";
    fit.model = modelOf(sleepReaction(), {FixedTerm::number("days", sleepDays())},
                        {term("subject", sleepSubject())});
    fit.criterion = 1786.465085;
    fit.variances = {1378.178539, 960.4565768};
    fit.fixed = {{251.4051048, 9.746716339}, {10.46728596, 0.8042214282}};
    fit.predictions = {{40.78370989, -77.84955392, -63.1085675, 4.406442118, 10.21618918,
                        8.221237906, 16.50049416, -2.996981188, -45.28212723, 72.18268623,
                        -21.19624899, 14.11136337, -7.862221215, 36.37842543, 7.036380928,
                        -6.362703065, -3.294272847, 18.11574675}};
    return fit;
}

ReferenceFit sleepCorrelated() {
    ReferenceFit fit;
    fit.name = "sleepstudy, correlated slopes";
    fit.model = modelOf(sleepReaction(), {FixedTerm::number("days", sleepDays())},
                        {term("subject", sleepSubject())});
    fit.model.random[0].covariates = {sleepDays()};
    fit.criterion = 1743.628272;
    fit.variances = {612.0897483, 9.604335475, 35.07166234, 654.9410407};
    fit.fixed = {{251.4051048, 6.824555776}, {10.46728596, 1.545788932}};
    fit.predictions = {
        {2.258565501,  9.198971904,   -40.39857692, -8.619703183,  -38.9602458,   -5.448879917,
         23.69049839,  -4.814331287,  22.26020266,  -3.069894581,  9.039525889,   -0.2721706516,
         16.84043112,  -0.2236244325, -7.232579173, 1.07457607,    -0.3336959517, -10.75215909,
         34.89035085,  8.628283953,   -25.21011033, 1.173414237,   -13.0699566,   6.614204981,
         4.577835128,  -3.015257178,  20.86359247,  3.536013316,   3.275453024,   0.8722166,
         -25.61286933, 4.822464599,   0.8070397316, -0.9881550894, 12.31453935,   1.284029745}};
    return fit;
}

ReferenceFit sleepIndependent() {
    ReferenceFit fit;
    fit.name = "sleepstudy, independent slopes";
    fit.model = modelOf(sleepReaction(), {FixedTerm::number("days", sleepDays())},
                        {term("subject", sleepSubject()), term("slope", sleepSubject())});
    fit.model.random[1].intercept = false;
    fit.model.random[1].covariates = {sleepDays()};
    fit.criterion = 1743.669294;
    fit.variances = {627.5691167, 35.85820178, 653.5838049};
    fit.fixed = {{251.4051048, 6.885381507}, {10.46728596, 1.559565996}};
    fit.predictions = {
        {1.512695998, -40.37389828, -39.18104265, 24.51890557, 22.91443432, 9.221974061,
         17.15612187, -7.451733804, 0.5787256076, 34.76792906, -25.75432471, -13.86503589,
         4.915980441, 20.92904321, 3.258647451, -26.47582774, 0.905647574, 12.42175791},
        {9.323489365, -8.59916916, -5.38779048, -4.968645839, -3.193934857, -0.3084935732,
         -0.2872073731, 1.115990059, -10.90596641, 8.627616114, 1.280687819, 6.756400597,
         -3.075132981, 3.51220965, 0.8730506736, 4.983786528, -1.005292931, 1.258402797}};
    return fit;
}

ReferenceFit cake() {
    ReferenceFit fit;
    fit.name = "cake";
    fit.model = modelOf(cakeAngle(), cakeFixed(),
                        {term("recipe:replicate", crossed(cakeRecipe(), cakeReplicate()))});
    fit.criterion = 1638.62146;
    fit.variances = {41.83703705, 20.47089947};
    fit.fixed = {
        {33.12222222, 1.736833395},   {-1.477777778, 2.456253343},  {-1.522222222, 2.456253343},
        {6.430329918, 1.168215148},   {-0.7128451081, 1.168215148}, {-2.325510697, 1.168215148},
        {-3.351284994, 1.168215148},  {-0.1511857892, 1.168215148}, {0.4541868715, 1.652105706},
        {0.08765009802, 1.652105706}, {-0.2327657496, 1.652105706}, {1.214746256, 1.652105706},
        {2.693219653, 1.652105706},   {2.638560213, 1.652105706},   {3.023715784, 1.652105706},
        {3.137105126, 1.652105706},   {-0.6635376304, 1.652105706}, {-1.625247234, 1.652105706}};
    fit.predictions = {{10.82807961,    9.44118137,   5.434586447,   -2.578603399, 2.352590352,
                        -6.276998713,   -4.581900861, -3.349102423,  -4.581900861, -3.195002618,
                        -0.4212061329,  0.6574925002, -1.808104376,  0.8115923049, -2.732703204,
                        14.19772868,    13.88952907,  4.335341173,   1.407444883,  1.715644493,
                        -3.061449454,   -3.986048282, -3.369649063,  -1.828651016, -4.140148087,
                        -2.753249845,   -2.136850626, -0.1335531641, -6.913944572, -7.222144182,
                        15.77982,       13.93062235,  3.605935431,   4.376434454,  -3.328555782,
                        -0.09245988284, -4.715454025, -6.410551877,  -6.872851291, -1.787557735,
                        -3.020356173,   -1.787557735, 1.29443836,    -5.640052853, -5.331853244}};
    return fit;
}

ReferenceFit cakeAdditive() {
    ReferenceFit fit;
    fit.name = "cake, additive";
    std::vector<double> degrees;
    for (const std::int32_t code : cakeTemperature().ofRecord) {
        degrees.push_back(175 + 10 * code);
    }
    fit.model =
        modelOf(cakeAngle(),
                {FixedTerm::factor("recipe", cakeRecipe()), FixedTerm::number("degrees", degrees)},
                {term("recipe:replicate", crossed(cakeRecipe(), cakeReplicate())),
                 term("replicate", cakeReplicate())});
    fit.criterion = 1655.944615;
    fit.variances = {3.682493704, 38.11512074, 20.70741794};
    fit.fixed = {{1.515873016, 3.678945991},
                 {-1.477777778, 0.9752763729},
                 {-1.522222222, 0.9752763729},
                 {0.158031746, 0.01621577438}};
    fit.predictions = {{-1.102676408,   -1.256123767,  0.6910669024,  -2.001127362,  1.183892451,
                        -1.852440965,   -0.2312042394, 0.4300799024,  -0.2312042394, -0.1857335296,
                        0.8500035709,   0.9393580031,  -0.8960993644, 2.510071718,   1.152137327,
                        0.7786176235,   1.227413781,   0.07735208123, 0.2243058212,  0.8282819942,
                        -0.05718172204, 0.1014636076,  0.4186085973,  1.30595064,    -0.7134135628,
                        -0.4519895545,  -0.6207394863, 0.03881199875, -1.803138988,  -1.354342831,
                        1.661908114,    1.250356391,   -0.3298792487, 1.881909404,   -1.9879234,
                        1.60042186,     -0.3057677224, -1.279144553,  -1.510254755,  0.6000508676,
                        -0.6011165204,  -0.4257273001, 0.836067701,   -1.091918074,  -0.2989827645},
                       {13.84721681, 12.64447517, 4.539042369, 1.087696789, 0.2510069513,
                        -3.200338629, -4.5076665, -4.455373386, -4.5076665, -3.095752399,
                        -2.102183217, -1.108614035, -0.2196310824, -3.984735352, -5.187476994}};
    return fit;
}

ReferenceFit televisionSharp() {
    ReferenceFit fit;
    fit.name = "TVbo, sharpness of movement";
    fit.model = modelOf(televisionSharpness(),
                        {FixedTerm::factor("set", televisionSet()),
                         FixedTerm::factor("picture", televisionPicture())},
                        {term("assessor:set", crossed(televisionAssessor(), televisionSet())),
                         term("assessor", televisionAssessor())});
    fit.criterion = 866.8775398;
    fit.variances = {0.22375324, 2.166932888, 4.871915722};
    fit.fixed = {{8.646354167, 0.6716272272},   {0.3140625, 0.4562736857}, {0.203125, 0.4562736857},
                 {0.07083333333, 0.4505513161}, {-1.08125, 0.4505513161},  {1.375, 0.4505513161}};
    fit.predictions = {{0.06008624214,   -0.05452868134, -0.09189398606, -0.06394284797,
                        -0.2994702182,   0.2240638828,   0.2312225505,   0.09309687346,
                        -0.08533295247,  0.2012818621,   0.2310901389,   -0.430989474,
                        -0.007140510322, -0.08480996396, -0.08858847792, -0.08284854645,
                        0.06451349802,   0.08760441667,  -0.1219796521,  0.1731642717,
                        -0.09594988926,  -0.2166790979,  -0.1230559186,  0.4810864802},
                       {-0.8361230404, -1.349523825, 2.314458753, 0.01338904924, -1.748425154,
                        0.670837536, -0.4335281805, 1.368914862}};
    return fit;
}

ReferenceFit televisionBalance() {
    ReferenceFit fit;
    fit.name = "TVbo, colour balance";
    fit.model = modelOf(televisionColour(), {},
                        {term("assessor:set", crossed(televisionAssessor(), televisionSet())),
                         term("assessor", televisionAssessor()),
                         term("picture", televisionPicture()), term("set", televisionSet())});
    fit.criterion = 777.8530763;
    fit.variances = {1.927783736, 0.3857153387, 0.05024409747, 1.353911731, 2.526390451};
    fit.fixed = {{8.030729167, 0.7781786157}};
    fit.predictions = {{0.2067340398,  -0.7383026171, -1.894473906,  -0.1338962971, 1.004732555,
                        1.620751003,   0.3291039604,  1.317365198,   -0.8484172137, 2.312429822,
                        -0.8773805013, 0.07159480613, -0.3486879896, -1.723346401,  0.1278345908,
                        -1.024794012,  0.5541971381,  -1.289368958,  -1.196926427,  -0.6705085746,
                        2.233245715,   0.2676453525,  -0.5377642342, 1.23823295},
                       {-0.485408078, 0.4985224255, 0.1596760417, 0.3014527714, -0.3889999019,
                        -0.3521379522, 0.07319223667, 0.1937024568},
                       {-0.08114377975, 0.1315088844, 0.1304914076, -0.1808565122},
                       {0.2890788514, -1.173573844, 0.884494993}};
    return fit;
}

ReferenceFit meadowfoam() {
    ReferenceFit fit;
    fit.name = "meadowfoam, tests and checks by block";
    fit.model = modelOf(meadowfoamWeight(), {FixedTerm::factor("block", meadowfoamBlock())},
                        {term("entry", meadowfoamEntry())});
    fit.criterion = 138.523407805;
    fit.variances = {0.474393452, 0.0994570323};
    fit.fixed = {{10.2868095, 0.168831762},   {-0.594467265, 0.20886135},
                 {0.0496861696, 0.20886135},  {0.125782894, 0.20886135},
                 {-0.0884040587, 0.20886135}, {-0.0180498784, 0.218515281}};
    fit.predictions = {
        {-0.646957194, -0.850459891, 0.556775782,  -1.69180678,   0.477540887,  0.439461136,
         0.464261679,  0.538663308,  0.38639876,   0.0274380945,  -0.393911696, 0.225842438,
         0.0591861447, -0.291275943, -0.708311345, -0.618988157,  0.609603647,  -0.415485461,
         -0.856855164, -0.782453535, 0.213001762,  -0.0219035525, 0.295670239,  -0.494692647,
         -0.729418868, -0.857114603, -1.0472521,   -0.122684503,  1.06448707,   0.274124183,
         0.122066438,  0.564783191,  -0.473353394, -0.0517441645, -1.22246803,  0.085306028,
         0.168233943,  0.432773068,  0.07571984,   -0.0104099263, 0.766673752,  0.011163838,
         0.480502579,  0.381300407,  0.564783191,  0.254129198,   0.192775047,  0.365059507,
         1.08928761,   1.56049793,   -0.132922892, -0.298793729,  -0.0282471209}};
    return fit;
}

} // namespace

std::vector<ReferenceFit> referenceFits() {
    return {dyestuff(),        dyestuff2(),       penicillin(),        pastes(),
            sleepIntercepts(), sleepCorrelated(), sleepIndependent(),  cake(),
            cakeAdditive(),    televisionSharp(), televisionBalance(), meadowfoam()};
}

} // namespace pipwright::published
