namespace Loadmark.Core.Checks;

/// <summary>
/// The id of a rule. Its name is a contract: it stands in findings, in JSON, and names the rule's page in <c>docs/rules</c>.
/// </summary>
/// <remarks>Every rule is listed here, so that code asks for a rule by this list and never by a string.</remarks>
public readonly record struct RuleId
{
    private readonly string? _name;

    private RuleId(string name) => _name = name;

    /// <summary>The id of rule <c>over-voltage</c>.</summary>
    public static RuleId OverVoltage { get; } = new("over-voltage");

    /// <summary>The id of rule <c>reversed-polarity</c>.</summary>
    public static RuleId ReversedPolarity { get; } = new("reversed-polarity");

    /// <summary>The id of rule <c>ac-into-dc</c>.</summary>
    public static RuleId AcIntoDc { get; } = new("ac-into-dc");

    /// <summary>The id of rule <c>dc-into-ac</c>.</summary>
    public static RuleId DcIntoAc { get; } = new("dc-into-ac");

    /// <summary>The id of rule <c>ac-shared</c>.</summary>
    public static RuleId AcShared { get; } = new("ac-shared");

    /// <summary>The id of rule <c>ground-short</c>.</summary>
    public static RuleId GroundShort { get; } = new("ground-short");

    /// <summary>The id of rule <c>series-short</c>.</summary>
    public static RuleId SeriesShort { get; } = new("series-short");

    /// <summary>The id of rule <c>parallel-unequal</c>.</summary>
    public static RuleId ParallelUnequal { get; } = new("parallel-unequal");

    /// <summary>The id of rule <c>mains-mismatch</c>.</summary>
    public static RuleId MainsMismatch { get; } = new("mains-mismatch");

    /// <summary>The id of rule <c>under-voltage</c>.</summary>
    public static RuleId UnderVoltage { get; } = new("under-voltage");

    /// <summary>The id of rule <c>outlet-overload</c>.</summary>
    public static RuleId OutletOverload { get; } = new("outlet-overload");

    /// <summary>The id of rule <c>start-overload</c>.</summary>
    public static RuleId StartOverload { get; } = new("start-overload");

    /// <summary>The id of rule <c>bank-overload</c>.</summary>
    public static RuleId BankOverload { get; } = new("bank-overload");

    /// <summary>The id of rule <c>supply-overload</c>.</summary>
    public static RuleId SupplyOverload { get; } = new("supply-overload");

    /// <summary>The id of rule <c>plug-mismatch</c>.</summary>
    public static RuleId PlugMismatch { get; } = new("plug-mismatch");

    /// <summary>The id of rule <c>unfed</c>.</summary>
    public static RuleId Unfed { get; } = new("unfed");

    /// <summary>The id of rule <c>fed-twice</c>.</summary>
    public static RuleId FedTwice { get; } = new("fed-twice");

    /// <summary>The id of rule <c>outlet-used-twice</c>.</summary>
    public static RuleId OutletUsedTwice { get; } = new("outlet-used-twice");

    /// <summary>The id of rule <c>lead-short-of-plugs</c>.</summary>
    public static RuleId LeadShortOfPlugs { get; } = new("lead-short-of-plugs");

    /// <summary>The id of rule <c>sags</c>.</summary>
    public static RuleId Sags { get; } = new("sags");

    /// <summary>The id of rule <c>does-not-start</c>.</summary>
    public static RuleId DoesNotStart { get; } = new("does-not-start");

    /// <summary>The id of rule <c>shared-return-digital</c>.</summary>
    public static RuleId SharedReturnDigital { get; } = new("shared-return-digital");

    /// <summary>The id of rule <c>return-not-its-own</c>.</summary>
    public static RuleId ReturnNotItsOwn { get; } = new("return-not-its-own");

    /// <summary>The id of rule <c>unregulated</c>.</summary>
    public static RuleId Unregulated { get; } = new("unregulated");

    /// <summary>The id of rule <c>thin-headroom</c>.</summary>
    public static RuleId ThinHeadroom { get; } = new("thin-headroom");

    /// <summary>The id of rule <c>voltage-high</c>.</summary>
    public static RuleId VoltageHigh { get; } = new("voltage-high");

    /// <summary>The id of rule <c>voltage-low</c>.</summary>
    public static RuleId VoltageLow { get; } = new("voltage-low");

    /// <summary>The id of rule <c>plug-loose</c>.</summary>
    public static RuleId PlugLoose { get; } = new("plug-loose");

    /// <summary>The id of rule <c>names-alike</c>.</summary>
    public static RuleId NamesAlike { get; } = new("names-alike");

    /// <summary>The id of rule <c>figure-assumed</c>.</summary>
    public static RuleId FigureAssumed { get; } = new("figure-assumed");

    /// <summary>The id of rule <c>idle-capacity</c>.</summary>
    public static RuleId IdleCapacity { get; } = new("idle-capacity");

    /// <summary>The id of rule <c>figure-conflict</c>.</summary>
    public static RuleId FigureConflict { get; } = new("figure-conflict");

    /// <summary>The id of rule <c>figure-derived</c>.</summary>
    public static RuleId FigureDerived { get; } = new("figure-derived");

    /// <summary>The name, such as <c>over-voltage</c>; empty for the id of no rule.</summary>
    public string Name => _name ?? "";

    /// <summary>The name of a rule, where text is wanted.</summary>
    /// <param name="rule">The rule.</param>
    public static implicit operator string(RuleId rule) => rule.Name;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
