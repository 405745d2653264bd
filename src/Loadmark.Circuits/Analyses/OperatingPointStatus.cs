namespace Loadmark.Circuits.Analyses;

/// <summary>What became of the search for a steady state.</summary>
public enum OperatingPointStatus
{
    /// <summary>Found; every load that is on has what its law asks for.</summary>
    Solved,

    /// <summary>Proved: the sources cannot feed the loads that are on. The proof is told.</summary>
    NoSolution,

    /// <summary>None was found, which does not prove that there is none.</summary>
    NotFound,

    /// <summary>There is none to stay in: a load drops out when it is on and would start again when it is off.</summary>
    Unsteady,
}
