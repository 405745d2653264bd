using System.Collections.Immutable;

namespace Loadmark.Circuits.Analyses;

/// <summary>A linear network seen from its ports: v = E − R·i, and the power asked for at each port.</summary>
/// <param name="Loads">Names of the loads at the first ports. One port more may follow: what an outlet at its limit holds back.</param>
/// <param name="Open">Open-circuit voltages E, V.</param>
/// <param name="Ohms">Resistances R between the ports, Ω.</param>
/// <param name="Watts">Power asked for, W; 0 at the port of the outlet.</param>
internal sealed record PortModel(ImmutableArray<string> Loads, double[] Open, double[,] Ohms, double[] Watts)
{
    public int Count => Open.Length;

    /// <summary>
    /// The most that Σ weight·power can be under any currents: the maximum of iᵀΛE − iᵀΛR·i, reached at the currents given back,
    /// is half of iᵀΛE there. Null where it has no maximum.
    /// </summary>
    public (double Watts, double[] Amps)? Limit(double[] weights)
    {
        // The lower triangle of L·Lᵀ = ½·(ΛR + RᵀΛ), by Cholesky.
        var factor = new double[Count, Count];
        for (var row = 0; row < Count; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var sum = 0.5 * ((weights[row] * Ohms[row, column]) + (weights[column] * Ohms[column, row]));
                for (var before = 0; before < column; before++)
                    sum -= factor[row, before] * factor[column, before];
                if (row != column)
                    factor[row, column] = sum / factor[column, column];
                else if (sum > 1e-12 * weights[row] * Ohms[row, row])
                    factor[row, row] = Math.Sqrt(sum);
                else
                    return null;
            }
        }

        var amps = new double[Count];
        for (var row = 0; row < Count; row++)
        {
            amps[row] = 0.5 * weights[row] * Open[row];
            for (var before = 0; before < row; before++)
                amps[row] -= factor[row, before] * amps[before];
            amps[row] /= factor[row, row];
        }

        for (var row = Count - 1; row >= 0; row--)
        {
            for (var after = row + 1; after < Count; after++)
                amps[row] -= factor[after, row] * amps[after];
            amps[row] /= factor[row, row];
        }

        var limit = 0.0;
        for (var port = 0; port < Count; port++)
            limit += 0.5 * amps[port] * weights[port] * Open[port];
        return (limit, amps);
    }

    /// <summary>Power that given currents deliver at a port, W.</summary>
    public double Power(int port, double[] amps)
    {
        var volts = Open[port];
        for (var other = 0; other < Count; other++)
            volts -= Ohms[port, other] * amps[other];
        return volts * amps[port];
    }
}
