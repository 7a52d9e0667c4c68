#pragma once

#include "ui/rows/cell_colouring.h"
#include "ui/rows/map_scene.h"

#include <optional>
#include <string>
#include <vector>

namespace pipwright::ui::testing {

/// Sizes of an invented orchard.
struct OrchardShape {
    int sites = 2;
    int rowsPerSite = 5;
    int places = 50; ///< of the longest row
    bool ragged = true;
    bool tape = true;
    unsigned seed = 7;
};

/// A name that is always the same for the same number.
Uuid treeNumber(int number);

/// Families planted in stretches, gaps, replants, doubles, stages as a breeder's rows have them.
ScenePointer randomScene(const OrchardShape& shape);

/// Sites x rows x places without gaps or doubles; codes "R<row>-<place>", rows "1", "2" ...
ScenePointer plainScene(int rows, int places);

/// Values that go with randomScene().
struct OrchardValues {
    std::vector<int> familyOf;
    std::vector<QString> families;
    std::vector<std::optional<double>> liking;
    std::vector<std::optional<double>> weeks;
    std::vector<std::optional<double>> difference;
    std::vector<std::optional<double>> doubt;
};
OrchardValues randomValues(const MapScene& scene, unsigned seed = 11);

} // namespace pipwright::ui::testing
