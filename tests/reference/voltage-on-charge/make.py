"""Voltages of a lithium iron phosphate cell on charge, with PyBaMM (pip install pybamm==26.10.1.1).

Prints, for each state of charge, the voltage at rest and at C/50, C/20 and C/10 after the last 2 % went in.
"""

import numpy as np
import pybamm

pybamm.set_logging_level("ERROR")
model = pybamm.lithium_ion.SPMe()
for soc in (0.2, 0.3, 0.5, 0.7, 0.9):
    row = []
    for rate in (1e-4, 1 / 50, 1 / 20, 1 / 10):
        cell = pybamm.ParameterValues("Prada2013")
        cell["Current function [A]"] = -rate * cell["Nominal cell capacity [A.h]"]
        part = 0.02 if rate > 1e-3 else 0.0
        hours = part / rate if part else 0.1
        simulation = pybamm.Simulation(model, parameter_values=cell)
        solution = simulation.solve(np.linspace(0, hours * 3600, 50), initial_soc=soc - part)
        row.append(round(float(solution["Voltage [V]"].entries[-1]), 4))
    print(soc, row)
