using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>
/// The variables of a model. Some are decisions: what feeds what. The others follow from them, and know how: so that a
/// wiring found elsewhere becomes a whole solution without the solver.
/// </summary>
internal sealed class VariableTable(CpModel model)
{
    private readonly List<(IntVar Variable, Func<long[], long>? Worth)> _variables = [];

    /// <summary>How many there are.</summary>
    public int Count => _variables.Count;

    /// <summary>All of them, in the order of their indices.</summary>
    public IEnumerable<IntVar> All => _variables.Select(static pair => pair.Variable);

    /// <summary>A decision from 0 to <paramref name="most"/>.</summary>
    public IntVar Decision(long most) => Add(most, null);

    /// <summary>A number from 0 to <paramref name="most"/> that follows from variables made before it.</summary>
    public IntVar Following(long most, Func<long[], long> worth) => Add(most, worth);

    /// <summary>A whole solution out of fractions, where the decisions among them are whole numbers.</summary>
    /// <param name="fractions">A value for each variable by its index.</param>
    /// <returns>Null where a decision is not whole.</returns>
    public long[]? Round(double[] fractions)
    {
        const double near = 1e-6;
        var values = new long[fractions.Length];
        foreach (var (variable, worth) in _variables)
        {
            var value = Math.Round(fractions[variable.Index]);
            if (worth is null && Math.Abs(value - fractions[variable.Index]) > near)
                return null;
            values[variable.Index] = (long)value;
        }

        Complete(values);
        return values;
    }

    /// <summary>Fills in what follows from the decisions.</summary>
    public void Complete(long[] values)
    {
        foreach (var (variable, worth) in _variables)
        {
            if (worth is not null)
                values[variable.Index] = worth(values);
        }
    }

    private IntVar Add(long most, Func<long[], long>? worth)
    {
        var variable = model.NewIntVar(0, most, "");
        _variables.Add((variable, worth));
        return variable;
    }
}
