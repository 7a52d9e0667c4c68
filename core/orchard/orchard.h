#pragma once

// Every word of the orchard book in one include.
#include "core/orchard/decisions.h"
#include "core/orchard/genotypes.h"
#include "core/orchard/grafts.h"
#include "core/orchard/people.h"
#include "core/orchard/places.h"
#include "core/orchard/plants.h"
#include "core/orchard/tastings.h"
#include "core/orchard/traits.h"
