namespace Loadmark.Storage.Tests.Damage;

/// <summary>What came of a damage.</summary>
internal enum DamageOutcome
{
    /// <summary>Everything reads as before: the damage is where nothing is kept.</summary>
    Harmless,

    /// <summary>The store is not opened, and it is said why.</summary>
    Refused,

    /// <summary>The store is not opened, it is said why, and what can still be read is in a new one after salvaging.</summary>
    Salvaged,

    /// <summary>The store is opened, and what cannot be read of it says so.</summary>
    ToldWhenRead,

    /// <summary>Something reads otherwise than it was kept, and nobody is told.</summary>
    Silent,

    /// <summary>An exception that is no fault of the medium: the program would end as if it were broken itself.</summary>
    FaultInProgram,

    /// <summary>A store that was refused was changed all the same.</summary>
    DamagedFurther,
}
