using Google.OrTools.Sat;

namespace Loadmark.Planning.Buying;

/// <summary>Holds a variable of a model at a value until it is disposed of.</summary>
internal sealed class HeldValue : IDisposable
{
    private readonly IntegerVariableProto _variable;
    private readonly long[] _domain;

    /// <summary>Holds a variable.</summary>
    public HeldValue(CpModel model, IntVar variable, long value)
    {
        _variable = model.Model.Variables[variable.Index];
        _domain = [.. _variable.Domain];
        Set([value, value]);
    }

    /// <inheritdoc/>
    public void Dispose() => Set(_domain);

    private void Set(long[] domain)
    {
        _variable.Domain.Clear();
        _variable.Domain.AddRange(domain);
    }
}
