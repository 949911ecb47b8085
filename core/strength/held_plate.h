// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "core/strength/plate.h"

namespace kerfwall {

/// How a material gives, the same in all directions.
struct Elastic {
    double modulus = 0;  ///< N/mm²
    double poisson = 0.3;
};

/// A force on a node, N.
struct NodeForce {
    std::size_t node = 0;
    Point force;
};

/// A plate held where its mesh says, whose movement under loads in its plane is asked for: plane stress, triangles of six nodes.
/// Made once for a plate; each load is then quick.
/// Source    any text on finite elements; solved by a general library's sparse Cholesky factors.
class HeldPlate {
public:
    /// Requires  a mesh with triangles, all of them held.
    HeldPlate(const PlateMesh& mesh, const Elastic& elastic);
    ~HeldPlate();
    HeldPlate(const HeldPlate&) = delete;
    HeldPlate& operator=(const HeldPlate&) = delete;

    /// False where the library could not factor: the answers then mean nothing.
    [[nodiscard]] bool isSound() const;

    /// How far what the forces stand on moves along them, each counted by its force: twice their work. For forces of 1 N in all that
    /// is the mean movement of a stretch they are spread over, mm. Quicker than all nodes' movements.
    [[nodiscard]] double givesTo(const std::vector<NodeForce>& forces) const;

    /// How far each node moves, mm.
    [[nodiscard]] std::vector<Point> movedBy(const std::vector<NodeForce>& forces) const;

private:
    struct Factors;
    [[nodiscard]] std::vector<double> loadOf(const std::vector<NodeForce>& forces) const;
    std::unique_ptr<Factors> m_factors;
};

}  // namespace kerfwall
